// The working-out half of typed_book.h.
#include <algorithm>

#include "model/levelling/book_words.h"
#include "model/levelling/read_book.h"
#include "model/levelling/typed_book.h"
#include "model/problem_lines.h"

namespace model {
namespace {

class BookWorker {
 public:
  BookWorker(const TypedBook& book, const std::string& file, const BookSettings& settings,
             BookMethod method)
      : file_(file), settings_(settings), method_(method) {
    worked_.rows.resize(book.rows.size());
    typed_.otherColumns = book.otherColumns;
    typed_.separator = book.separator;
    for (size_t i = 0; i < book.rows.size(); ++i) {
      if (book.rows[i].empty()) continue;
      typed_.rows.push_back(book.rows[i]);
      from_.push_back(i);
    }
  }

  WorkedBook workOut(bool adjust) {
    if (typed_.rows.empty()) return std::move(worked_);
    const ReadBookResult read = readBook(typedBookText(typed_), file_, settings_);
    tell(read.problems, wrongHowever());
    worked_.whole = read.book.has_value();
    if (read.book)
      finish(*read.book, adjust);
    else
      reduceSoFar();
    return std::move(worked_);
  }

 private:
  // The row of the page that a line of the text is; nothing for the headings and for none.
  WorkedRow* rowOfLine(int line) {
    const int index = line - 2;
    if (index < 0 || index >= static_cast<int>(from_.size())) return nullptr;
    return &worked_.rows[from_[static_cast<size_t>(index)]];
  }

  // What is wrong even if the book went on behind its last row.
  Problems wrongHowever() const {
    TypedBook closed = typed_;
    if (!endsOnForesight(closed)) closed.rows.push_back(anEnd());
    return readBook(typedBookText(closed), file_, settings_).problems;
  }

  void tell(const Problems& problems, const Problems& however) {
    for (const Problem& problem : problems) {
      WorkedRow* row = rowOfLine(problem.place.line);
      // The headings are the program's own, and columns that it does not read are kept.
      if (!row && problem.place.line > 0) continue;
      const bool error = problem.severity == Severity::Error;
      const bool stays = std::any_of(however.begin(), however.end(), [&](const Problem& other) {
        return other.place.line == problem.place.line && other.what == problem.what;
      });
      auto& list = !row     ? worked_.sentences
                   : !error ? row->lookAt
                   : stays  ? row->wrong
                            : row->unfinished;
      list.push_back(inOneLine(problem));
    }
  }

  void finish(const LevelBook& book, bool adjust) {
    ReducedBook reduced = reduceBook(book, settings_, method_);
    worked_.closing = closeBook(book, reduced, settings_.allowance);
    std::optional<std::string> refusal;
    if (adjust) refusal = adjustBook(book, reduced, worked_.closing, Adjust::WithinAllowance);
    worked_.adjusted = adjust && !refusal;
    for (const std::string& sentence :
         bookSentences(book, reduced, worked_.closing, worked_.adjusted))
      worked_.sentences.push_back(sentence);
    if (refusal) worked_.sentences.push_back("Not adjusted.");
    put(book, reduced, book.bookings.size());
  }

  void put(const LevelBook& book, const ReducedBook& reduced, size_t count) {
    for (size_t i = 0; i < count; ++i) {
      WorkedRow* row = rowOfLine(book.bookings[i].places.point.line);
      if (!row) continue;
      const ReducedRow& from = reduced.rows[i];
      row->rise = from.rise;
      row->fall = from.fall;
      row->collimation = from.collimation;
      row->level = from.level;
      if (worked_.adjusted) row->adjusted = from.adjusted();
    }
  }

  // The longest beginning that would be a book if it were closed: distances and levels worked out
  // by hand do not touch the levels.
  void reduceSoFar() {
    TypedBook beginning = typed_;
    for (TypedBooking& row : beginning.rows)
      row[BookColumn::Distance].clear(), row[BookColumn::Booked].clear();
    while (!beginning.rows.empty()) {
      TypedBook closed = beginning;
      const bool open = !endsOnForesight(beginning);
      if (open) closed.rows.push_back(anEnd());
      const ReadBookResult read = readBook(typedBookText(closed), file_, settings_);
      if (read.book) {
        put(*read.book, reduceBook(*read.book, settings_, method_),
            read.book->bookings.size() - (open ? 1 : 0));
        return;
      }
      beginning.rows.resize(std::min(beginning.rows.size() - 1, firstWrong(read.problems)));
    }
  }

  static bool endsOnForesight(const TypedBook& book) {
    const TypedBooking& last = book.rows.back();
    return !last[BookColumn::Foresight].empty() && last[BookColumn::Backsight].empty();
  }

  static TypedBooking anEnd() {
    TypedBooking end;
    end[BookColumn::Point] = "\xE2\x80\xA6";  // a name that nobody gives a point
    end[BookColumn::Foresight] = "1";
    return end;
  }

  static size_t firstWrong(const Problems& problems) {
    size_t first = std::string::npos;
    for (const Problem& problem : problems) {
      if (problem.severity == Severity::Error && problem.place.line >= 2)
        first = std::min(first, static_cast<size_t>(problem.place.line - 2));
    }
    return first;
  }

  const std::string& file_;
  const BookSettings& settings_;
  BookMethod method_;
  TypedBook typed_;           // without the empty rows
  std::vector<size_t> from_;  // of the page's rows, each of those
  WorkedBook worked_;
};

}  // namespace

WorkedBook workOut(const TypedBook& book, const std::string& file, const BookSettings& settings,
                   BookMethod method, bool adjust) {
  return BookWorker(book, file, settings, method).workOut(adjust);
}

}  // namespace model
