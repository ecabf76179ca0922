// The title block, bottom right, as on any drawing.
#include <algorithm>
#include <cmath>

#include "model/level_text.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

void drawNorth(const OverlaySheet& sheet, const glm::vec2& c, float r) {
  const double angle =
      sheet.model.job.site.northBearing * 3.14159265358979 / 180 - sheet.frame.camera.azimuth;
  const glm::vec2 d{float(std::sin(angle)), float(-std::cos(angle))}, n{-d.y, d.x};
  const Pen& pen = sheet.pen;
  pen.list()->AddCircle(im(c), r, colour(ink::kInk), 0, 1.3f * pen.unit());
  const glm::vec2 tip = c + d * r * 0.92f, back = c - d * r * 0.6f;
  pen.list()->AddTriangleFilled(im(tip), im(back + n * r * 0.42f), im(c - d * r * 0.25f),
                                colour(ink::kInk));
  pen.list()->AddTriangle(im(tip), im(back - n * r * 0.42f), im(c - d * r * 0.25f),
                          colour(ink::kInk), 1.2f * pen.unit());
  const glm::vec2 size = pen.size("N", Cut::Bold);
  pen.text(c + glm::vec2(-size.x / 2, r + pen.unit()), ink::kInk, "N", Cut::Bold);
}

constexpr float kLeastLetters = 0.83f;  // of their size, to get a text into its row

std::string stageRow(const OverlaySheet& sheet, const std::string& first) {
  const auto& stages = sheet.model.programme.stages;
  if (stages.empty()) return "No stages";
  std::string text =
      first + std::to_string(sheet.frame.stage + 1) + " of " + std::to_string(stages.size());
  const std::string date = isoDateAt(sheet.model.programme, sheet.frame.time);
  return date.empty() ? text : text + ", " + dateWords(date);
}

std::string benchMarkRow(const OverlaySheet& sheet) {
  const auto& mark = sheet.model.job.site.benchMark;
  if (!mark) return "No bench mark given";
  return "Bench mark " + model::levelText(mark->level) + ", " + mark->name;
}

bool dateStandsLeft(const OverlaySheet& sheet) {
  const auto& stages = sheet.model.programme.stages;
  if (stages.empty()) return false;
  const TapeLayout tape = tapeOf(sheet.model, sheet.layout, sheet.frame.time, sheet.pen);
  return tape.xAt(sheet.frame.time) < tape.tape.centre().x;
}

// A row that answers to a click shows it.
bool underPointer(const OverlaySheet& sheet, TitleRow row) {
  const OverlayOptions& options = sheet.options;
  if (!options.pointer || !titleRow(sheet.layout, row).contains(*options.pointer)) return false;
  if (row == TitleRow::View) return options.viewIsButton;
  if (row == TitleRow::BenchMark && !sheet.model.job.site.benchMark) return false;
  return options.fieldsAreButtons;
}

}  // namespace

Box titleRow(const SheetLayout& layout, TitleRow row) {
  const float height = layout.titleBlock.height() / float(TitleRow::Count);
  const float top = layout.titleBlock.top + height * float(row);
  return {layout.titleBlock.left, top, layout.titleBlock.right, top + height};
}

void drawTitleBlock(OverlaySheet& sheet) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const Box& block = sheet.layout.titleBlock;
  pen.fill(block, ink::kCard, 0.96f);
  const float northWidth = titleRow(sheet.layout, TitleRow::Job).height() * 2;
  // On a narrow sheet the briefer wording.
  const auto row = [&](TitleRow which, const std::string& full, Cut cut, const std::string& brief) {
    const Box box = titleRow(sheet.layout, which);
    const bool besideNorth = which == TitleRow::Job || which == TitleRow::Stage;
    const float width = box.width() - 22 * u - (besideNorth ? northWidth : 0);
    const Pen least = pen.sized(kLeastLetters);
    const std::string& text = least.size(full, cut).x <= width ? full : brief;
    const Pen fit = pen.fitted(text, width, cut, kLeastLetters);
    fit.text({box.left + 12 * u, box.centre().y - fit.lineHeight(cut) * 0.5f}, ink::kInk,
             fit.shortened(text, width, cut), cut);
    if (which != TitleRow::Job)
      pen.line({box.left, box.top},
               {box.right - (which == TitleRow::Stage ? northWidth : 0), box.top}, ink::kFaint);
  };
  for (const TitleRow which : {TitleRow::Job, TitleRow::View, TitleRow::Units, TitleRow::BenchMark})
    if (underPointer(sheet, which)) pen.fill(titleRow(sheet.layout, which), ink::kTape, 0.5f);
  const model::Job& job = sheet.model.job;
  const std::string view = viewWords(sheet.frame, sheet.scene);
  row(TitleRow::Job, job.name, Cut::Bold, job.name);
  row(TitleRow::Stage, stageRow(sheet, "Stage "), Cut::Text, stageRow(sheet, ""));
  row(TitleRow::View, "View: " + view, Cut::Text, view);
  row(TitleRow::Units, "mm, levels m; 0.000 = " + job.datumNote, Cut::Text,
      "mm, m; 0.000 = " + job.datumNote);
  const std::string mark = benchMarkRow(sheet);
  row(TitleRow::BenchMark, mark, Cut::Text, mark);
  const float left = block.right - northWidth;
  pen.line({left, block.top}, {left, block.top + northWidth}, ink::kFaint);
  // The letter stands under the arrow, inside the two rows.
  const float arrow =
      std::min(northWidth * 0.27f, (northWidth - pen.lineHeight(Cut::Bold) - 4 * u) / 2);
  drawNorth(sheet, {left + northWidth / 2, block.top + 3 * u + arrow}, arrow);
  pen.outline(block, ink::kInk, 1.6f);
}

void drawScaleBar(OverlaySheet& sheet) {
  const Camera& camera = sheet.frame.camera;
  if (!camera.parallel) return;
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const double metres = 2 * camera.distance * std::tan(camera.fieldOfView / 2);
  const double perMetre = double(sheet.layout.sheet.height()) / metres;
  const Box& tape = sheet.layout.tape;
  // The longest round length that stays short on the sheet and clear of the date.
  const double longest = double(std::min(150 * u, tape.width() / 2 - 150 * u));
  double length = 0.1;
  for (const double next : {0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0})
    if (next * perMetre < longest) length = next;
  const float px = float(length * perMetre);
  const std::string text = model::lengthText(length) + " mm";
  const float whole = px + 8 * u + pen.size(text).x;
  // Over the tape, at the end that the date is not at.
  const float x = dateStandsLeft(sheet) ? tape.right - whole : tape.left;
  const float y = tape.top - 33 * u;
  for (int i = 0; i < 4; ++i) {
    const Box part{x + px * float(i) / 4, y, x + px * float(i + 1) / 4, y + 6 * u};
    pen.fill(part, i % 2 ? ink::kPaper : ink::kInk);
    pen.outline(part, ink::kInk);
  }
  pen.haloText({x + px + 8 * u, y + 3 * u - pen.lineHeight() / 2}, ink::kInk, text);
}

}  // namespace viewer
