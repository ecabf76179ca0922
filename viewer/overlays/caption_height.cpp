#include "viewer/overlays/caption_height.h"

#include <algorithm>
#include <cmath>

namespace viewer {
namespace {

constexpr float kText = 16, kHeading = 27;  // units
constexpr float kLetter = 0.43f;            // of a letter's width in its size, generously
constexpr float kIndent = 24;

float linesOf(const std::string& text, float width) {
  return std::max(1.0f, std::ceil(float(text.size()) * kText * kLetter / std::max(width, 60.0f)));
}

// The first stage that brings something into the upper half of all that is built.
size_t firstTallStage(const model::Model& model) {
  const auto& schedule = model.settingOut.schedule;
  if (schedule.empty()) return 0;
  const double middle = (schedule.front().level + schedule.back().level) / 2;
  size_t first = model.programme.stages.size();
  for (const model::Element& element : model.works.elements) {
    if (element.top <= middle || element.kind == model::ElementKind::StandingBuilding) continue;
    if (const auto stage = model.programme.indexOf(element.placed.stage))
      first = std::min(first, *stage);
  }
  return first;
}

}  // namespace

std::vector<CaptionPart> captionParts(const model::Stage& stage) {
  using Mark = CaptionPart::Mark;
  std::vector<CaptionPart> all;
  if (!stage.what.empty()) all.push_back({stage.what, ink::kInk, Cut::Text, Mark::None});
  if (!stage.atEnd.empty())
    all.push_back({"At the end: " + stage.atEnd, ink::kSoft, Cut::Text, Mark::None});
  if (!stage.holdPoint.empty())
    all.push_back({"Hold point: " + stage.holdPoint, ink::kInk, Cut::Bold, Mark::Hold});
  if (!stage.caution.empty())
    all.push_back({stage.caution, ink::kCaution, Cut::Text, Mark::Caution});
  if (!stage.note.empty()) all.push_back({"Note: " + stage.note, ink::kInk, Cut::Text, Mark::None});
  return all;
}

float captionHeightOf(const model::Model& model, size_t stage, float width, float unit) {
  float height = kHeading * 1.3f;
  // The line that names the course.
  if (!model.works.units.empty()) height += kText * 1.22f + 4;
  for (const CaptionPart& part : captionParts(model.programme.stages[stage])) {
    const float indent = part.mark == CaptionPart::Mark::None ? 0 : kIndent;
    height += linesOf(part.text, width / unit - indent) * kText * 1.22f + 4;
  }
  return height * unit;
}

float tallestCaption(const model::Model& model, float width, float unit) {
  float tallest = (kHeading * 1.3f + kText * 1.22f) * unit;
  for (size_t i = firstTallStage(model); i < model.programme.stages.size(); ++i)
    tallest = std::max(tallest, captionHeightOf(model, i, width, unit));
  return tallest;
}

}  // namespace viewer
