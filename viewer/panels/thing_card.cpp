#include "viewer/panels/thing_card.h"

#include <algorithm>
#include <cstdio>

#include "model/level_text.h"
#include "viewer/overlays/pen.h"
#include "viewer/overlays/words.h"

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

std::vector<std::string> thingWords(const model::Model& model, std::size_t index) {
  const model::Element& e = model.works.elements[index];
  const model::Bounds box = model::bounds(e.solid);
  std::vector<std::string> words{e.name};
  words.push_back(capital(model::nameOf(e.kind)) + ", " + model::nameOf(e.material));
  words.push_back("Top " + model::levelText(e.top) + ", " + courseWords(model, e.top));
  words.push_back("Underside " + model::levelText(e.underside) + ", " +
                  courseWords(model, e.underside));
  words.push_back("Over all " + model::lengthText(box.high.x - box.low.x) + " x " +
                  model::lengthText(box.high.y - box.low.y) + " x " +
                  model::lengthText(box.high.z - box.low.z) + " mm");
  if (e.quantity.amount > 0) words.push_back("Quantity " + quantityWords(e.quantity));
  words.push_back("Placed: " + stageWords(model, e.placed));
  if (e.removed) words.push_back("Removed: " + stageWords(model, *e.removed));
  return words;
}

void drawThingCard(ImDrawList* list, const ReadyJob& job, std::uint32_t selected,
                   const SheetLayout& layout) {
  if (selected == kNothing || selected >= job.model.works.elements.size()) return;
  const Pen pen(list);
  const float u = pen.unit();
  const auto words = thingWords(job.model, selected);
  float width = 0;
  for (size_t i = 0; i < words.size(); ++i)
    width = std::max(width, pen.size(words[i], i ? Cut::Text : Cut::Bold).x);
  width = std::min(width, 400 * u);
  const float step = pen.lineHeight() * 1.24f;
  const float height = step * float(words.size()) + 20 * u;
  const float bottom = layout.tape.top - 42 * u, right = layout.titleBlock.left - 14 * u;
  const Box card{right - width - 26 * u, bottom - height, right, bottom};
  pen.fill(card, ink::kCard);
  pen.outline(card, ink::kInk, 1.5f);
  for (size_t i = 0; i < words.size(); ++i) {
    const Cut cut = i ? Cut::Text : Cut::Bold;
    pen.text({card.left + 13 * u, card.top + 11 * u + step * float(i)}, ink::kInk,
             pen.shortened(words[i], width, cut), cut);
  }
}

}  // namespace viewer
