// Draws the tape: graduations, names, hold points, waits and the hook.
#include <algorithm>
#include <cmath>

#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

void drawBody(const Pen& pen, const TapeLayout& tape, float hookX) {
  const float u = pen.unit();
  const Box& box = tape.tape;
  pen.fill({box.left + 3 * u, box.top + 4 * u, box.right + 3 * u, box.bottom + 4 * u}, ink::kInk,
           0.10f);
  pen.fill(box, ink::kTape);
  pen.fill({box.left, box.top, hookX, box.bottom}, ink::kTapeDone);
}

void drawGraduations(const Pen& pen, const TapeLayout& tape) {
  const float u = pen.unit();
  const float top = tape.tape.top;
  for (size_t i = 0; i + 1 < tape.edges.size(); ++i)
    if (tape.waitFrom[i] < tape.edges[i + 1] - 1)
      pen.hatch({tape.waitFrom[i], top, tape.edges[i + 1], top + 13 * u}, ink::kInk, 5 * u, 0.55f);
  for (const float x : tape.days) pen.line({x, top}, {x, top + 7 * u}, ink::kInk, 1, 0.8f);
  for (const float x : tape.edges) pen.line({x, top}, {x, top + 20 * u}, ink::kInk, 1.5f);
}

// A fine line ties a name to its graduation; it passes behind upper names. A name that stands aside
// for its neighbours is met by a bend.
void tie(const Pen& pen, const TapeLayout& tape, const TapeName& name) {
  const float u = pen.unit();
  const float x = tape.edges[name.stage], top = tape.tape.top + 20 * u;
  const float left = name.box.left - 5 * u;
  if (std::abs(left - x) > u) {
    const float meets = std::clamp(x, name.box.left, name.box.right), y = name.box.top - 2 * u;
    pen.line({x, top}, {x, top + 4 * u}, ink::kInk, 1, 0.35f);
    if (name.box.top < top + 8 * u) return;  // in the upper row it stands right under
    pen.line({x, top + 4 * u}, {meets, y}, ink::kInk, 1, 0.35f);
    return;
  }
  const float bottom = name.box.bottom - 2 * u;
  for (const TapeName& other : tape.names) {
    if (other.box.bottom > name.box.top + u || !other.box.grown(3 * u).contains({x, other.box.top}))
      continue;
    pen.line({x, top}, {x, other.box.top - u}, ink::kInk, 1, 0.35f);
    pen.line({x, other.box.bottom + u}, {x, bottom}, ink::kInk, 1, 0.35f);
    return;
  }
  pen.line({x, top}, {x, bottom}, ink::kInk, 1, 0.35f);
}

void drawNames(const Pen& pen, const TapeLayout& tape, size_t current) {
  for (const TapeName& name : tape.names) {
    tie(pen, tape, name);
    pen.text({name.box.left, name.box.top}, ink::kInk, name.text,
             name.stage == current ? Cut::Bold : Cut::Text);
  }
}

void drawHolds(const OverlaySheet& sheet, const TapeLayout& tape) {
  const float u = sheet.pen.unit();
  const auto& stages = sheet.model.programme.stages;
  for (size_t i = 0; i < stages.size(); ++i)
    if (!stages[i].holdPoint.empty())
      sheet.pen.diamond({tape.edges[i + 1], tape.tape.top - 8 * u}, 6 * u, ink::kCard, ink::kInk);
}

// The end hook: a dark clasp on the graduations and a hairline through the names, so that it never
// hides the one it points at.
void drawHook(const Pen& pen, const Box& tape, float x) {
  const float u = pen.unit();
  pen.line({x, tape.top}, {x, tape.bottom + 6 * u}, ink::kInk, 1.5f);
  const Box clasp{x - 6 * u, tape.top - 15 * u, x + 6 * u, tape.top + 22 * u};
  pen.fill(clasp, ink::kInk);
  for (int i = -1; i <= 1; ++i) {
    const float y = clasp.centre().y + float(i) * 5 * u;
    pen.line({x - 3 * u, y}, {x + 3 * u, y}, ink::kTape, 1.3f);
  }
  pen.fill({x - 9 * u, tape.bottom + 2 * u, x + 1 * u, tape.bottom + 7 * u}, ink::kInk);
}

// The three paces, that in use on a card.
void drawPaces(const OverlaySheet& sheet) {
  if (!sheet.options.pace) return;
  for (int i = 0; i < kPaceCount; ++i) {
    const auto box = paceBox(sheet.layout, sheet.pen.unit(), Pace(i));
    if (!box) return;
    const bool now = Pace(i) == *sheet.options.pace;
    const Cut cut = now ? Cut::Bold : Cut::Text;
    const bool under = sheet.options.pointer && box->contains(*sheet.options.pointer);
    const Pen pen = sheet.pen.fitted(nameOf(Pace(i)), box->width(), cut, 0.6f);
    const glm::vec2 size = pen.size(nameOf(Pace(i)), cut);
    const glm::vec2 at = box->centre() - size * 0.5f;
    if (now || under) sheet.pen.fill(*box, ink::kCard);
    if (now) sheet.pen.outline(*box, ink::kInk, 1.2f);
    pen.haloText(at, ink::kInk, nameOf(Pace(i)), cut);
  }
}

// Where words of a width over the tape begin that are meant for x: inside its ends, and beside the
// paces.
float tagLeft(const OverlaySheet& sheet, float x, float width) {
  const Box& tape = sheet.layout.tape;
  const float u = sheet.pen.unit();
  const float left = std::clamp(x - width / 2, tape.left, std::max(tape.left, tape.right - width));
  if (!sheet.options.pace) return left;
  const auto first = paceBox(sheet.layout, u, Pace(0));
  const auto last = paceBox(sheet.layout, u, Pace(kPaceCount - 1));
  if (!first || left > last->right + 8 * u || left + width < first->left - 8 * u) return left;
  return x < tape.centre().x ? std::max(tape.left, first->left - 8 * u - width)
                             : std::min(last->right + 8 * u, tape.right - width);
}

// Words over the tape at x, the bold ones on a card.
void tag(const OverlaySheet& sheet, float x, const std::string& text, Cut cut, float lift) {
  const Box& tape = sheet.layout.tape;
  const Pen pen = sheet.pen.fitted(text, tape.width(), cut, 0.5f);
  const float u = pen.unit();
  const float width = pen.size(text, cut).x;
  const float left = tagLeft(sheet, x, width);
  const float top = tape.top - lift * u - pen.lineHeight(cut);
  const Box paper = Box::at({left, top}, {width, pen.lineHeight(cut)}).grown(5 * u);
  if (cut == Cut::Text) {
    pen.haloText({left, top}, ink::kInk, text, cut);
    return;
  }
  pen.fill(paper, ink::kCard, 0.97f);
  pen.outline(paper, ink::kInk, 1.2f);
  pen.text({left, top}, ink::kInk, text, cut);
}

std::string hoverWords(const model::Programme& programme, size_t i) {
  const model::Stage& stage = programme.stages[i];
  std::string text = std::to_string(i + 1) + "  " + stage.name;
  if (!stage.start.empty()) {
    text += ", " + dateWords(stage.start);
    if (stage.finish != stage.start) text += " to " + dateWords(stage.finish);
  }
  return stage.holdPoint.empty() ? text : text + ", hold point at its end";
}

// What the date stands for, or the stage where there are no dates; by piece, which one of how many.
std::string hookWords(const OverlaySheet& sheet) {
  const std::string date = isoDateAt(sheet.model.programme, sheet.frame.time);
  std::string words =
      date.empty() ? "Stage " + std::to_string(sheet.frame.stage + 1) : dateWords(date);
  if (sheet.options.waits) words += ", a wait";
  if (!sheet.options.pieceCount.empty()) words += ", " + sheet.options.pieceCount;
  return words;
}

}  // namespace

std::optional<Box> paceBox(const SheetLayout& layout, float unit, Pace pace) {
  constexpr float kWidth = 70, kHeight = 20, kOver = 19, kLeastTape = 560;  // units
  const Box& tape = layout.tape;
  if (tape.width() < kLeastTape * unit) return std::nullopt;
  const float left = tape.centre().x + (float(pace) - float(kPaceCount) / 2) * kWidth * unit;
  return Box::at({left, tape.top - (kOver + kHeight) * unit}, {kWidth * unit, kHeight * unit});
}

TapeLayout tapeOf(const model::Model& model, const SheetLayout& layout, double time,
                  const Pen& pen) {
  std::vector<TapeStage> stages;
  for (const model::Stage& s : model.programme.stages)
    stages.push_back({s.name, s.days, s.waitDays, !s.holdPoint.empty()});
  // Measured in bold, so that a name does not jump when it becomes the current one.
  return layOutTape(
      stages, layout.tape, size_t(stageAt(time, stages.size())),
      [&](const std::string& text) { return pen.size(text, Cut::Bold); }, pen.unit());
}

void drawTape(OverlaySheet& sheet) {
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const auto& programme = sheet.model.programme;
  const TapeLayout tape = tapeOf(sheet.model, sheet.layout, sheet.frame.time, pen);
  const float hookX = tape.xAt(sheet.frame.time);
  drawBody(pen, tape, hookX);
  drawGraduations(pen, tape);
  drawNames(pen, tape, size_t(sheet.frame.stage));
  pen.outline(tape.tape, ink::kInk, 1.5f);
  drawHolds(sheet, tape);
  if (programme.stages.empty()) return;
  drawHook(pen, tape.tape, hookX);
  drawPaces(sheet);
  const auto& pointer = sheet.options.pointer;
  if (pointer && tape.tape.grown(10 * u).contains(*pointer)) {
    if (const auto stage = tape.stageAt(pointer->x)) {
      pen.line({pointer->x, tape.tape.top}, {pointer->x, tape.tape.bottom}, ink::kInk, 1, 0.5f);
      tag(sheet, pointer->x, hoverWords(programme, *stage), Cut::Bold, 24);
      return;
    }
  }
  tag(sheet, hookX, hookWords(sheet), Cut::Text, 22);
}

}  // namespace viewer
