#include "model/exchange/book_table.h"

#include <functional>

#include "model/job/lengths.h"
#include "model/levelling/book_words.h"
#include "model/levelling/staff_text.h"

namespace model {
namespace {

std::string staffOr(const std::optional<double>& reading) {
  return reading ? staffText(*reading) : "";
}

std::string levelOr(const std::optional<double>& level) { return level ? levelText(*level) : ""; }

// One column: its heading, whether it is of numbers, and what stands in a row and under the sums.
struct Column {
  std::string heading;
  bool numeric;
  std::function<std::string(const Booking&, const ReducedRow&)> cell;
  std::string sum;
};

std::vector<Column> sightColumns(const BookSums& sums) {
  return {{"point", false, [](const Booking& b, const ReducedRow&) { return b.point; }, "sums"},
          {"backsight m", true,
           [](const Booking& b, const ReducedRow&) { return staffOr(b.backsight); },
           staffText(sums.backsights)},
          {"intermediate m", true,
           [](const Booking& b, const ReducedRow&) { return staffOr(b.intermediate); },
           staffText(sums.intermediates)},
          {"foresight m", true,
           [](const Booking& b, const ReducedRow&) { return staffOr(b.foresight); },
           staffText(sums.foresights)}};
}

void addMethodColumns(const ReducedBook& reduced, std::vector<Column>& columns) {
  if (reduced.method == BookMethod::Collimation) {
    columns.push_back({"collimation m", true,
                       [](const Booking&, const ReducedRow& r) { return levelOr(r.collimation); },
                       ""});
    return;
  }
  columns.push_back({"rise m", true,
                     [](const Booking&, const ReducedRow& r) { return staffOr(r.rise); },
                     staffText(reduced.sums.rises)});
  columns.push_back({"fall m", true,
                     [](const Booking&, const ReducedRow& r) { return staffOr(r.fall); },
                     staffText(reduced.sums.falls)});
}

std::vector<Column> columnsOf(const ReducedBook& reduced, bool adjusted) {
  std::vector<Column> columns = sightColumns(reduced.sums);
  addMethodColumns(reduced, columns);
  columns.push_back({"level m", true,
                     [](const Booking&, const ReducedRow& r) { return levelText(r.level); }, ""});
  if (adjusted) {
    columns.push_back({"correction mm", true,
                       [](const Booking&, const ReducedRow& r) { return lengthText(r.correction); },
                       ""});
    columns.push_back({"adjusted m", true,
                       [](const Booking&, const ReducedRow& r) { return levelText(r.adjusted()); },
                       ""});
  }
  columns.push_back(
      {"known m", true, [](const Booking&, const ReducedRow& r) { return levelOr(r.known); }, ""});
  columns.push_back({"distance m", true,
                     [](const Booking& b, const ReducedRow&) {
                       return b.distance ? numberValueText(*b.distance) : "";
                     },
                     ""});
  columns.push_back(
      {"remark", false, [](const Booking& b, const ReducedRow&) { return b.remark; }, ""});
  return columns;
}

Table tableOf(const std::vector<Column>& columns, const LevelBook& book,
              const ReducedBook& reduced) {
  Table table;
  for (const Column& column : columns) {
    table.columns.push_back(column.heading);
    table.numeric.push_back(column.numeric);
  }
  for (size_t i = 0; i < book.bookings.size(); ++i) {
    table.rows.emplace_back();
    for (const Column& column : columns) {
      table.rows.back().push_back(column.cell(book.bookings[i], reduced.rows[i]));
    }
  }
  table.title = "Level book, " + methodName(reduced.method) + ", " +
                std::to_string(reduced.setUps) + (reduced.setUps == 1 ? " set-up" : " set-ups");
  return table;
}

}  // namespace

Table bookTable(const LevelBook& book, const ReducedBook& reduced, bool adjusted) {
  return tableOf(columnsOf(reduced, adjusted), book, reduced);
}

std::string bookPage(const LevelBook& book, const ReducedBook& reduced,
                     const std::optional<Closing>& closing, bool adjusted) {
  const std::vector<Column> columns = columnsOf(reduced, adjusted);
  Table table = tableOf(columns, book, reduced);
  const bool anyIntermediate = reduced.sums.intermediates != 0;
  table.rows.emplace_back(columns.size());
  table.rows.emplace_back();
  for (const Column& column : columns) {
    const bool unused = column.heading == "intermediate m" && !anyIntermediate;
    table.rows.back().push_back(unused ? "" : column.sum);
  }
  std::string page = write(table, TableStyle::People) + "\n";
  for (const std::string& sentence : bookSentences(book, reduced, closing, adjusted))
    page += sentence + "\n";
  return page;
}

}  // namespace model
