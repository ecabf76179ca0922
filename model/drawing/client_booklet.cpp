#include "model/drawing/client_booklet.h"

#include <algorithm>

#include "model/drawing/booklet_pages.h"
#include "model/drawing/brief_column.h"
#include "model/drawing/client_words.h"
#include "model/programme/date_words.h"

namespace model {

namespace {

constexpr double kGap = 4;
constexpr double kLargest = 3.2, kSmallest = 2.0;

std::string byWhen(const Model& model, size_t stage) {
  const std::string date = dateWords(model.programme.stages[stage].start);
  return date.empty() ? "before stage " + std::to_string(stage + 1) + " begins" : date;
}

SheetTable decisionsTable(const Model& model) {
  SheetTable table;
  table.title = "What you are to decide";
  table.columns = {{"by", false}, {"decision", false}, {"stage", true}};
  for (size_t i = 0; i < model.programme.stages.size(); ++i)
    if (!model.programme.stages[i].decision.empty())
      table.rows.push_back(
          {byWhen(model, i), model.programme.stages[i].decision, std::to_string(i + 1)});
  return table;
}

std::string frontWords(const Model& model) {
  const auto& stages = model.programme.stages;
  std::string last;
  for (const Stage& stage : stages) last = std::max(last, stage.finish);
  std::string words =
      "What happens on your building, stage by stage. Dates are what is planned today; weather and "
      "deliveries may move them.";
  if (!stages.empty() && !stages.front().start.empty())
    words = "From " + dateWords(stages.front().start) + " to " + dateWords(last) + ". " + words;
  return words;
}

void drawPage(Sheet& sheet, const Model& model, size_t index, const Jpeg* picture,
              const TextWidth& widthOf) {
  const Stage& stage = model.programme.stages[index];
  const ClientStage client = clientStage(model, index);
  Area area = bookletArea(sheet);
  const std::string number =
      "Stage " + std::to_string(index + 1) + " of " + std::to_string(model.programme.stages.size());
  area.high.y = drawStageHead(sheet, area, number, client.title,
                              {dateSpanWords(stage.start, stage.finish),
                               client.title == stage.name ? "" : "on the programme: " + stage.name},
                              widthOf);
  if (picture) {
    const double low = area.high.y - kClientPictureHeight;
    drawPicture(sheet, {{area.low.x, low}, area.high}, *picture);
    area.high.y = low - kGap;
  }
  const std::string decision =
      stage.decision.empty()
          ? ""
          : stage.decision +
                (stage.decision.ends_with('.') || stage.decision.ends_with('?') ? "" : ".");
  if (!decision.empty())
    area.low.y = drawFramed(sheet, {area.low, {area.high.x, area.low.y}},
                            "Please decide by " + byWhen(model, index), decision, kPen070,
                            "stages --stage " + stage.id, widthOf) +
                 kGap;
  std::vector<BriefPart> parts;
  const auto words = [&](const char* heading, const std::string& text) {
    if (!text.empty()) parts.push_back(briefWords(heading, text, "stages --stage " + stage.id));
  };
  words("What happens", client.what);
  // What the job says itself comes in place of what is usual.
  words("What you will notice", stage.notice.empty() ? client.notice : stage.notice);
  words("What there is to see at its end", client.atEnd);
  if (decision.empty()) words("What is wanted of you", "Nothing is to be decided for this stage.");
  for (double letters = kLargest; letters >= kSmallest - 1e-9; letters -= 0.2) {
    BriefColumn column(parts, area.width(), letters, widthOf);
    const bool whole = column.fit(area.height());
    if (!whole && letters - 0.2 >= kSmallest - 1e-9) continue;
    column.draw(sheet, area);
    break;
  }
}

}  // namespace

Drawing drawClientBooklet(const Model& model, const StagePictures& pictures,
                          const BookletOptions& options, const TextWidth& widthOf) {
  Booklet booklet(model, "For the client", options, widthOf);
  BookletFront front{"What happens when", frontWords(model), false, {}, {}};
  const SheetTable decisions = decisionsTable(model);
  if (!decisions.rows.empty()) front.tables.push_back(decisions);
  for (size_t i = 0; i < model.programme.stages.size(); ++i)
    front.names.push_back(clientStage(model, i).title);
  booklet.contents(front);
  booklet.pages([&](Sheet& sheet, size_t stage) {
    drawPage(sheet, model, stage,
             stage < pictures.size() && !pictures[stage].bytes.empty() ? &pictures[stage] : nullptr,
             widthOf);
  });
  return booklet.finish();
}

}  // namespace model
