#include "model/drawing/crew_brief.h"

#include <algorithm>
#include <array>

#include "model/decimal_text.h"
#include "model/drawing/booklet_pages.h"
#include "model/drawing/brief_column.h"
#include "model/drawing/brief_facts.h"
#include "model/drawing/stage_craft.h"
#include "model/drawing/stage_plan.h"
#include "model/programme/date_words.h"

namespace model {

namespace {

constexpr double kGap = 4;                          // between columns, mm
constexpr std::array kLetters{2.5, 2.2, 2.0, 1.8};  // heights of capitals, largest first
constexpr double kSignBox = 11, kSignLabel = 1.4;

std::string joined(const std::vector<std::string>& words, const char* with) {
  std::string text;
  for (const std::string& each : words)
    if (!each.empty()) text += (text.empty() ? "" : with) + each;
  return text;
}

std::string daysWords(const Stage& stage) {
  std::string words = decimalText(stage.days, stage.days == int(stage.days) ? 0 : 1);
  words += stage.days == 1 ? " working day" : " working days";
  if (stage.waitDays > 0)
    words += ", then " +
             decimalText(stage.waitDays, stage.waitDays == int(stage.waitDays) ? 0 : 1) +
             " to wait";
  return words;
}

struct Columns {
  BriefColumn left, right;
};

class BriefPage {
 public:
  BriefPage(Sheet& sheet, const Model& model, const BriefFacts& facts, size_t stage,
            const TextWidth& widthOf)
      : sheet_(sheet),
        model_(model),
        facts_(facts),
        index_(stage),
        stage_(model.programme.stages[stage]),
        widthOf_(widthOf),
        area_(bookletArea(sheet)),
        all_("stages --stage " + stage_.id) {}

  void draw(const Jpeg* picture) {
    head();
    figures(picture);
    foot();
    columns();
  }

 private:
  void head() {
    const std::string number = "Stage " + std::to_string(index_ + 1) + " of " +
                               std::to_string(model_.programme.stages.size());
    area_.high.y = drawStageHead(sheet_, area_, number, stage_.name,
                                 {dateSpanWords(stage_.start, stage_.finish), daysWords(stage_),
                                  stage_.crew.empty() ? "" : "Crew: " + stage_.crew},
                                 widthOf_);
  }

  void figures(const Jpeg* picture) {
    const double low = area_.high.y - kBriefPictureHeight;
    Area plan{{area_.low.x, low}, area_.high};
    if (picture) plan.low.x += kBriefPictureWidth + kGap;
    const bool planned = drawStagePlan(sheet_, plan, model_, facts_, index_, widthOf_);
    if (picture) {
      const double width = planned ? kBriefPictureWidth : area_.width();
      drawPicture(sheet_, {{area_.low.x, low}, {area_.low.x + width, area_.high.y}}, *picture);
    }
    if (picture || planned) area_.high.y = low - kGap;
  }

  // From the lower edge up: boxes to sign, the hold point, the caution.
  void foot() {
    area_.low.y = drawSignBoxes(area_.low.y);
    const std::string hold =
        stage_.holdPoint.empty()
            ? "None is usual here; sign when the stage is finished and checked."
            : stage_.holdPoint;
    area_.low.y = framed(stage_.holdPoint.empty() ? "No hold point" : "HOLD POINT", hold,
                         stage_.holdPoint.empty() ? kPen025 : kPen070);
    if (!stage_.caution.empty()) area_.low.y = framed("Caution", stage_.caution, kPen035);
    area_.low.y += kGap - 1.5;
  }

  double drawSignBoxes(double y) {
    const bool hold = !stage_.holdPoint.empty();
    const std::vector<std::pair<std::string, double>> boxes{
        {hold ? "SEEN BY (NAME, FOR WHOM)" : "CHECKED BY (NAME)", 0.4},
        {"SIGNATURE", 0.35},
        {"DATE, TIME", 0.25}};
    double x = area_.low.x;
    for (const auto& [name, share] : boxes) {
      const Area box{{x, y}, {x + share * area_.width(), y + kSignBox}};
      sheet_.outline(Layer::Tables, {kPen025, LineType::Continuous}, box.corners());
      Text text;
      text.layer = Layer::Tables;
      text.text = name;
      text.size = kSignLabel;
      text.up = Up::Top;
      text.at = {box.low.x + 1.5, box.high.y - 1};
      sheet_.texts.push_back(text);
      x = box.high.x;
    }
    return y + kSignBox;
  }

  double framed(const std::string& title, const std::string& words, double pen) {
    return drawFramed(sheet_, {area_.low, {area_.high.x, area_.low.y}}, title, words, pen, all_,
                      widthOf_);
  }

  std::string before() const {
    // The one before may be of the job's own and say nothing.
    for (size_t i = index_; i-- > 0;) {
      const Stage& stage = model_.programme.stages[i];
      if (!stage.atEnd.empty()) return "After stage " + std::to_string(i + 1) + ": " + stage.atEnd;
    }
    return "The site as it was found.";
  }

  std::vector<BriefPart> leftParts() const {
    const StageCraft* craft = craftOf(stage_.key.kind, model_.job);
    std::vector<BriefPart> parts;
    const auto words = [&](const char* heading, const std::string& text) {
      if (!text.empty()) parts.push_back(briefWords(heading, text, all_));
    };
    words("There before", before());
    words("What we do", stage_.what);
    words("There at the end", stage_.atEnd);
    words("Note", stage_.note);
    const auto list = [&](const char* heading, const auto& lines, const char* mark) {
      std::vector<std::string> items;
      for (const char* line : linesOf(lines)) items.emplace_back(line);
      if (!items.empty()) parts.push_back(briefList(heading, items, mark, ""));
    };
    if (!craft) {
      BriefPart notes{"Notes", BriefLook::Boxes, {}, "", 10};
      notes.table.columns = {{"to be written in", false}};
      parts.push_back(std::move(notes));
      return parts;
    }
    list("Order of work", craft->order, "");
    list("Watch out", craft->watch, "\u2013");
    words("Tools and plant", joined({craft->tools, craft->plant}, ". Plant: ") + ".");
    return parts;
  }

  std::vector<BriefPart> rightParts() const {
    std::vector<BriefPart> parts;
    const auto table = [&](const char* heading, SheetTable rows, BriefLook look,
                           const std::string& more, size_t blanks = 0) {
      if (rows.rows.empty() && blanks == 0) return;
      parts.push_back({heading, look, std::move(rows), more, blanks});
    };
    table("Levels to hit, and what is read", facts_.levelsTable(index_), BriefLook::Boxes, "levels",
          5);
    table("Courses, counted from the damp course", facts_.coursesTable(index_), BriefLook::Table,
          "rod");
    table("Lines, and how far off the outer face", facts_.linesTable(index_), BriefLook::Table,
          "lines");
    table("Check by tape", facts_.tapeTable(index_), BriefLook::Boxes, "lines");
    table("Load out, by wall (this lift with its corners)", facts_.loadingTable(index_),
          BriefLook::Table, "takeoff --loading");
    if (facts_.onScaffold(index_) && !facts_.loadingTable(index_).rows.empty())
      parts.push_back(briefWords("Loads", std::string(kLoadingCaution) + ".", ""));
    table("Deliveries", facts_.deliveriesTable(index_), BriefLook::Table, "programme");
    table("Quantities", facts_.quantitiesTable(index_), BriefLook::Table, "takeoff --by-stage");
    return parts;
  }

  // The largest letters with which all goes in, with the last parts of the right column under those
  // of the left where that helps; else what leaves out the fewest rows.
  void columns() {
    const double width = (area_.width() - kGap) / 2;
    const std::vector<BriefPart> left = leftParts(), right = rightParts();
    std::optional<Columns> best;
    size_t leastOut = 0;
    for (const double letters : kLetters)
      for (size_t moved = 0; moved < std::max<size_t>(right.size(), 1); ++moved) {
        if (best && leastOut == 0) break;
        std::vector<BriefPart> first = left, second = right;
        first.insert(first.end(), right.end() - long(moved), right.end());
        second.resize(right.size() - moved);
        Columns tried{{std::move(first), width, letters, widthOf_},
                      {std::move(second), width, letters, widthOf_}};
        tried.left.fit(area_.height());
        tried.right.fit(area_.height());
        const size_t out = tried.left.leftOut() + tried.right.leftOut();
        if (best && out >= leastOut) continue;
        best.emplace(std::move(tried));
        leastOut = out;
      }
    best->left.draw(sheet_, {area_.low, {area_.low.x + width, area_.high.y}});
    best->right.draw(sheet_, {{area_.high.x - width, area_.low.y}, area_.high});
  }

  Sheet& sheet_;
  const Model& model_;
  const BriefFacts& facts_;
  size_t index_;
  const Stage& stage_;
  const TextWidth& widthOf_;
  Area area_;  // what of the page is free
  std::string all_;
};

}  // namespace

Drawing drawCrewBrief(const Model& model, const StagePictures& pictures,
                      const BookletOptions& options, const TextWidth& widthOf) {
  const BriefFacts facts(model);
  Booklet booklet(model, "Crew brief", options, widthOf);
  booklet.contents({"Crew brief",
                    "A page for each stage, to be read before it begins and signed at "
                    "its end. Levels in metres above " +
                        model.job.datumNote + "; lengths in mm.",
                    true,
                    {},
                    {}});
  booklet.pages([&](Sheet& sheet, size_t stage) {
    BriefPage(sheet, model, facts, stage, widthOf)
        .draw(stage < pictures.size() && !pictures[stage].bytes.empty() ? &pictures[stage]
                                                                        : nullptr);
  });
  return booklet.finish();
}

}  // namespace model
