#include "viewer/panels/thing_card.h"

#include <algorithm>
#include <cstdio>

#include "model/level_text.h"
#include "viewer/number_origin.h"
#include "viewer/overlays/pen.h"
#include "viewer/overlays/words.h"
#include "viewer/own_size.h"
#include "viewer/unit_words.h"

namespace viewer {
namespace {

std::string stageWords(const model::Model& model, const model::Placement& placement) {
  if (placement.stage.kind == model::StageKind::Existing) return "before work starts";
  const auto index = model.programme.indexOf(placement.stage);
  if (!index) return "not in this programme";
  return "stage " + std::to_string(*index + 1) + ", " + model.programme.stages[*index].name;
}

std::string quantityWords(const model::Quantity& quantity) {
  char text[48];
  const bool each = quantity.unit == model::Unit::Each;
  std::snprintf(text, sizeof text, each ? "%.0f %s" : "%.2f %s", quantity.amount,
                model::nameOf(quantity.unit));
  return text;
}

std::string capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = char(text[0] - 'a' + 'A');
  return text;
}

}  // namespace

std::vector<CardLine> thingLines(const ReadyJob& job, std::size_t index) {
  const model::Model& model = job.model;
  const model::Element& e = model.works.elements[index];
  std::vector<CardLine> lines{{e.name, CardInk::Name}};
  const auto add = [&](const std::string& words) { lines.push_back({words, CardInk::Plain}); };
  const auto origin = [&](Figure figure) {
    const std::string words = originWords(model, job.places, e, figure);
    if (!words.empty()) lines.push_back({words, CardInk::Quiet});
  };
  add(capital(model::nameOf(e.kind)) + ", " + model::nameOf(e.material));
  add("Top " + model::levelText(e.top) + ", " + courseWords(model, e.top));
  origin(Figure::Top);
  add("Underside " + model::levelText(e.underside) + ", " + courseWords(model, e.underside));
  origin(Figure::Underside);
  add(sizeWords(ownSize(model.settingOut, e)));
  origin(Figure::Size);
  if (e.quantity.amount > 0) add("Quantity " + quantityWords(e.quantity));
  add("Placed: " + stageWords(model, e.placed));
  if (e.removed) add("Removed: " + stageWords(model, *e.removed));
  return lines;
}

void drawThingCard(ImDrawList* list, const ReadyJob& job, const Frame& frame,
                   const SheetLayout& layout) {
  const std::uint32_t selected = frame.selected;
  if (selected == kNothing || selected >= job.model.works.elements.size()) return;
  const Pen pen(list);
  const float u = pen.unit(), most = 400 * u, indent = 14 * u;
  const auto cutOf = [](const CardLine& line) {
    return line.ink == CardInk::Name ? Cut::Bold : Cut::Text;
  };
  const auto in = [&](const CardLine& line) { return line.ink == CardInk::Quiet ? indent : 0; };
  auto lines = thingLines(job, selected);
  if (frame.selectedUnit < job.scene.modelUnits.size()) {
    const size_t unit = job.scene.modelUnits[frame.selectedUnit];
    lines[0].ink = CardInk::Plain;
    lines.insert(lines.begin(), {unitWords(job.model, selected, unit), CardInk::Name});
  }
  float width = 0, height = 20 * u;
  for (const CardLine& line : lines)
    width = std::max(width, pen.size(line.words, cutOf(line)).x + in(line));
  width = std::min(width, most) + 1;
  for (const CardLine& line : lines)
    height += pen.paragraph({0, 0}, width - in(line), ink::kInk, line.words, cutOf(line), true);
  const Box room{layout.drawing.left, layout.drawing.top,
                 std::max(layout.titleBlock.left - 14 * u, layout.drawing.left),
                 layout.tape.top - 42 * u};
  const Box card = cardPlace({width + 26 * u, height}, room,
                             seenTriangles(job.scene, frame, layout.sheet, selected));
  pen.fill(card, ink::kCard);
  pen.outline(card, ink::kInk, 1.5f);
  glm::vec2 at{card.left + 13 * u, card.top + 11 * u};
  for (const CardLine& line : lines)
    at.y +=
        pen.paragraph(at + glm::vec2(in(line), 0), width - in(line),
                      line.ink == CardInk::Quiet ? ink::kSoft : ink::kInk, line.words, cutOf(line));
}

}  // namespace viewer
