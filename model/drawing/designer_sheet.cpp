#include "model/drawing/designer_sheet.h"

#include <algorithm>

#include "model/asbuilt/reading_summary.h"
#include "model/drawing/answer_lines.h"
#include "model/drawing/designer_plan.h"
#include "model/drawing/report_pages.h"
#include "model/drawing/report_tables.h"

namespace model {

namespace {

constexpr Letters kSummary{2.5, false};
constexpr double kMostTogether = 120;  // mm

std::string counted(size_t number, const std::string& one) {
  return std::to_string(number) + " " + one + (number == 1 ? "" : "s");
}

// "12 given, 15 worked out and 4 assumed".
template <typename Row>
std::string originsOf(const std::vector<Row>& rows) {
  const auto number = [&](Origin origin) {
    return std::to_string(
               std::count_if(rows.begin(), rows.end(),
                             [&](const Row& row) { return row.source.origin == origin; })) +
           " " + nameOf(origin);
  };
  return number(Origin::Given) + ", " + number(Origin::WorkedOut) + " and " +
         number(Origin::Assumed);
}

std::string readingsWords(const DesignerSheetData& data) {
  const size_t counting = countReadings(data.built).counting();
  if (counting == 0) return "Nothing was read on site yet.";
  return counted(counting, "reading") + " of what was built; " +
         (data.facts.off.empty() ? std::string("none is out.")
                                 : std::to_string(data.facts.off.size()) + " out, listed last.");
}

std::string questionsWords(const DesignerSheetData& data) {
  const auto& questions = data.facts.questions;
  if (questions.empty()) return "There are no questions.";
  return counted(questions.size(), "question") + " to answer, the first " +
         wantedBy(data.model.programme, questions.front()) + ".";
}

void drawSummary(ReportFlow& flow, const DesignerSheetData& data) {
  flow.paragraph("For the designer: levels, dimensions and questions", {3.5, true});
  flow.gap(1);
  const std::string& drawing = data.model.job.drawing;
  flow.paragraph(drawing.empty() ? "No drawing is named that the numbers are from."
                                 : "The numbers are from drawing " + drawing + ".",
                 kSummary);
  flow.paragraph(counted(data.facts.levels.size(), "level") + ": " + originsOf(data.facts.levels) +
                     ". " + counted(data.facts.dimensions.size(), "dimension") + ": " +
                     originsOf(data.facts.dimensions) + ". " +
                     counted(data.facts.openings.size(), "opening") + ".",
                 kSummary);
  flow.paragraph(questionsWords(data), kSummary);
  flow.paragraph(readingsWords(data), kSummary);
  flow.gap(2);
  flow.tables({questionsInShort(data)});
}

// Of a question with its answer; what is higher than half a page may be split.
double heightOf(const ReportFlow& flow, const std::string& about,
                const std::vector<std::string>& parts, const TextWidth& widthOf) {
  const Letters body = ReportFlow::kBody;
  const double width = flow.width() - ReportFlow::kIndent;
  const double line = ReportFlow::kLeading * body.size, gap = 0.6 * body.size;
  double height =
      kAnswerHeight + gap + line * double(wrapped(about, width, {body.size, true}, widthOf).size());
  for (const std::string& part : parts)
    height += gap + line * double(wrapped(part, width, body, widthOf).size());
  return std::min(height, kMostTogether);
}

void drawQuestions(ReportFlow& flow, const DesignerSheetData& data, const TextWidth& widthOf) {
  if (data.facts.questions.empty()) return;
  flow.heading("Questions", 60);
  for (const SheetQuestion& question : data.facts.questions) {
    std::vector<std::string> parts{question.text};
    if (!question.assumed.empty()) parts.push_back("Until then: " + question.assumed + ".");
    if (!question.changes.empty()) parts.push_back("It changes: " + question.changes + ".");
    parts.push_back("Wanted " + wantedBy(data.model.programme, question) + ".");
    flow.keep(heightOf(flow, question.about, parts, widthOf));
    flow.item("Q" + std::to_string(question.number), question.about,
              {ReportFlow::kBody.size, true});
    for (const std::string& part : parts) flow.item("", part);
    drawAnswer(flow, widthOf,
               question.assumed.empty() ? std::vector<std::string>{}
                                        : std::vector<std::string>{"as assumed", "otherwise:"});
    flow.gap(3);
  }
}

}  // namespace

Drawing drawDesignerSheet(const Model& model, const AsBuilt& built, const DesignerSheetFacts& facts,
                          const DesignerSheetOptions& options, const TextWidth& widthOf) {
  const DesignerSheetData data{model, built, facts};
  Drawing drawing;
  drawing.title = "Designer's sheet, " + model.job.name;
  ReportPages pages(Paper::A4);
  ReportFlow flow(drawing, pages, widthOf);
  drawSummary(flow, data);
  drawDesignerPlan(flow, data, widthOf);
  flow.tables({sheetLevelsTable(data)});
  flow.tables({sheetDimensionsTable(data)});
  flow.tables({sheetOpeningsTable(data)});
  drawQuestions(flow, data, widthOf);
  flow.tables({offReadingsTable(data)});
  flow.tables({changesTable({model.job, model.settingOut, built})});
  drawStatement(
      drawing, pages,
      "Given: on the drawing, as the job file has it on that line. Worked out: follows from other "
      "numbers. Assumed: not given; what stands here is in common use and is a question.",
      "\u25b2 out: high, outside or long; \u25bc out: low, inside or short. No answer in it is an "
      "approval.",
      widthOf);
  TitleBlock block = titleBlockOf(model.job, "Designer's sheet", options.date);
  block.scale = "sheet at A4";
  pages.finish(drawing, block, widthOf);
  return drawing;
}

}  // namespace model
