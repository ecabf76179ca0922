#include "model/drawing/designer_report.h"

#include <algorithm>

#include "model/asbuilt/designer_questions.h"
#include "model/asbuilt/reading_summary.h"
#include "model/drawing/answer_lines.h"
#include "model/drawing/report_pages.h"
#include "model/drawing/report_plan.h"
#include "model/drawing/report_tables.h"

namespace model {

namespace {

constexpr Letters kSummary{2.5, false};
constexpr double kPlan = 125, kLeastPlan = 65, kBelowPlan = 8;  // heights of a plan

std::string counted(size_t number, const std::string& one) {
  return std::to_string(number) + " " + one + (number == 1 ? "" : "s");
}

// "33 within what is allowed, 2 at the edge of it and 1 out."
std::string verdictWords(const ReadingCount& count) {
  return std::to_string(count.within) + " within what is allowed, " +
         std::to_string(count.atTheEdge) + " at the edge of it and " + std::to_string(count.out) +
         " out.";
}

std::string summaryWords(const ReportData& data) {
  const ReadingCount count = countReadings(data.built);
  if (count.all() == 0) return "Nothing was read yet.";
  std::string words = counted(count.all(), "reading") + " in " +
                      counted(data.job.readings.size(), "set") +
                      ", held against the drawing: " + verdictWords(count);
  if (count.readAgain > 0)
    words += " " + std::to_string(count.readAgain) +
             " more were read again in a later set and do not count.";
  if (count.unheld > 0)
    words += " For " + std::to_string(count.unheld) + " the drawing has nothing to hold against.";
  return words;
}

// "2 first beds, 1 bearing and rafters" of what is changed.
std::string changesWords(const AsBuilt& built) {
  std::vector<std::string> parts;
  for (const ChangeOf of :
       {ChangeOf::FirstBed, ChangeOf::Corner, ChangeOf::Face, ChangeOf::ClearSpan, ChangeOf::Cavity,
        ChangeOf::Bearing, ChangeOf::Rafters}) {
    const auto number = size_t(std::count_if(built.changes.begin(), built.changes.end(),
                                             [&](const Change& c) { return c.of == of; }));
    if (number == 0) continue;
    const bool cavities = of == ChangeOf::Cavity && number > 1;
    parts.push_back(of == ChangeOf::Rafters ? "rafters"
                    : cavities              ? std::to_string(number) + " cavities"
                                            : counted(number, nameOf(of)));
  }
  std::string words;
  for (size_t i = 0; i < parts.size(); ++i)
    words += (i == 0 ? "" : i + 1 == parts.size() ? " and " : ", ") + parts[i];
  return words;
}

void drawSummary(ReportFlow& flow, const ReportData& data, size_t questions) {
  flow.paragraph("Report to the designer: what was read against the drawing", {3.5, true});
  flow.gap(1);
  flow.paragraph(summaryWords(data), kSummary);
  const std::string changes = changesWords(data.built);
  if (!changes.empty())
    flow.paragraph("What was read changes " + changes + ", as listed below.", kSummary);
  else if (countReadings(data.built).all() > 0)
    flow.paragraph("What was read changes nothing above.", kSummary);
  flow.paragraph(
      questions == 0 ? "There are no questions." : counted(questions, "question") + " to answer.",
      kSummary);
  flow.gap(2);
  flow.tables({setsTable(data), mostOffTable(data)});
}

void drawChanges(ReportFlow& flow, const ReportData& data) {
  flow.tables({changesTable(data)});
  flow.tables({firstBedsTable(data), cavitiesTable(data)});
}

void drawQuestions(ReportFlow& flow, const std::vector<DesignerQuestion>& questions,
                   const TextWidth& widthOf) {
  if (questions.empty()) return;
  flow.heading("Questions to the designer", 55);
  for (size_t i = 0; i < questions.size(); ++i) {
    const DesignerQuestion& question = questions[i];
    flow.keep(kAnswerHeight + 22);
    flow.item(std::to_string(i + 1), question.about, {ReportFlow::kBody.size, true});
    flow.item("", question.text);
    drawAnswer(flow, widthOf);
    flow.gap(3);
  }
}

std::string setWords(const ReadingSet& set, const ReadingCount& count) {
  std::string words = set.date.empty() ? "No date is given" : "Read on " + set.date;
  if (!set.by.empty()) words += " by " + set.by;
  words += "; from " + set.file + ". ";
  if (count.all() == 0) return words + "There is no reading in it.";
  return words + counted(count.all(), "reading") + ": " + verdictWords(count);
}

void drawSetPlan(ReportFlow& flow, const ReportData& data, size_t set, const TextWidth& widthOf) {
  // Rather smaller than on the next page.
  const double left = flow.left() - kBelowPlan;
  const auto plan =
      reportPlanOf(data, set, {flow.width(), left < kLeastPlan ? kPlan : std::min(kPlan, left)});
  if (!plan) return;
  const TablePlace place = flow.room(plan->height);
  const size_t unnamed =
      drawReportPlan(flow.drawing().sheets[place.sheet], place.area, *plan, data, set, widthOf);
  std::string words = "On plan, 1:" + std::to_string(plan->scale) +
                      ", numbered as below; where several were read, the mark of the one most off.";
  if (unnamed > 0)
    words += " " + counted(unnamed, "mark") + " had no room for numbers, or lie off the plan.";
  flow.paragraph(words, {1.8, false});
  flow.gap(2);
}

void drawReadings(ReportFlow& flow, const ReportData& data, const TextWidth& widthOf) {
  if (data.job.readings.empty()) return;
  flow.heading("Readings");
  flow.tables({setUpsTable(data)});
  for (size_t i = 0; i < data.job.readings.size(); ++i) {
    const ReadingSet& set = data.job.readings[i];
    flow.heading(set.name, kLeastPlan + kBelowPlan + 31);
    flow.paragraph(setWords(set, countReadings(data.built, i)));
    drawSetPlan(flow, data, i, widthOf);
    flow.tables({readingsTable(data, i)});
  }
}

}  // namespace

Drawing drawDesignerReport(const Job& job, const SettingOut& out, const AsBuilt& built,
                           const DesignerReportOptions& options, const TextWidth& widthOf) {
  const ReportData data{job, out, built};
  const std::vector<DesignerQuestion> questions = designerQuestions(job, built);
  Drawing drawing;
  drawing.title = "Report to the designer of " + job.name;
  ReportPages pages(options.paper);
  ReportFlow flow(drawing, pages, widthOf);
  drawSummary(flow, data, questions.size());
  drawChanges(flow, data);
  drawQuestions(flow, questions, widthOf);
  drawReadings(flow, data, widthOf);
  flow.tables({raftersTable(data)});
  flow.tables({photographsTable(data)});
  drawStatement(
      drawing, pages,
      "This report holds readings against the figures of the drawing and works out lengths. It "
      "does not size or judge structure, and no answer in it is an approval.",
      "\u25cf within; \u25c6 at the edge: four fifths of what is allowed or more; \u25b2 out: "
      "high, "
      "outside or long; \u25bc out: low, inside or short. Levels are above 0.000.",
      widthOf);
  pages.finish(drawing, titleBlockOf(job, "Report to the designer", options.date), widthOf);
  return drawing;
}

}  // namespace model
