// The stage's name and words, top left.
#include <algorithm>

#include "model/level_text.h"
#include "viewer/overlays/caption_height.h"
#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

constexpr float kLeastWidth = 150;  // units; with less, a pulled out sheet has taken the place

float drawPart(const Pen& pen, const CaptionPart& part, const glm::vec2& at, float width,
               bool measureOnly) {
  const float u = pen.unit();
  const float indent = part.mark == CaptionPart::Mark::None ? 0 : 24 * u;
  const float used = pen.paragraph(at + glm::vec2(indent, 0), width - indent, part.rgb, part.text,
                                   part.cut, measureOnly);
  if (!measureOnly) {
    const glm::vec2 middle = at + glm::vec2(8 * u, pen.lineHeight() * 0.52f);
    if (part.mark == CaptionPart::Mark::Caution) pen.caution(middle, 7.5f * u);
    if (part.mark == CaptionPart::Mark::Hold) pen.diamond(middle, 7 * u, ink::kCard, ink::kInk);
  }
  return used;
}

struct Caption {
  std::string heading;
  std::vector<CaptionPart> parts;
};

glm::vec2 drawCaption(const Pen& pen, const Caption& caption, const Box& box, bool measureOnly) {
  const Pen head = pen.fitted(caption.heading, box.width(), Cut::Heading, 0.65f);
  const std::string heading = head.shortened(caption.heading, box.width(), Cut::Heading);
  glm::vec2 at{box.left, box.top};
  float width = head.size(heading, Cut::Heading).x;
  if (!measureOnly) head.text(at, ink::kInk, heading, Cut::Heading);
  at.y += pen.lineHeight(Cut::Heading) * 1.3f;
  for (const CaptionPart& part : caption.parts) {
    at.y += drawPart(pen, part, at, box.width(), measureOnly) + pen.lineHeight() * 0.2f;
    width =
        std::max(width, std::min(box.width(), pen.size(part.text, part.cut).x + 24 * pen.unit()));
  }
  return {width, at.y - box.top};
}

// The course that is being laid.
std::optional<CaptionPart> coursePart(const OverlaySheet& sheet, size_t stage) {
  const model::CourseStep* step =
      model::courseAt(sheet.options.facts->courseSteps, sheet.frame.time);
  if (!step || step->stage != stage) return std::nullopt;
  const std::string number = step->number > 0
                                 ? std::to_string(step->number)
                                 : std::to_string(-step->number) + " below the damp course";
  return CaptionPart{"Course " + number + ", its top at " + model::levelText(step->top),
                     ink::kStringWords, Cut::Bold, CaptionPart::Mark::None};
}

}  // namespace

void drawCaptions(OverlaySheet& sheet) {
  const auto& stages = sheet.model.programme.stages;
  const Box& box = sheet.layout.captions;
  const float u = sheet.pen.unit();
  if (stages.empty() || box.width() < kLeastWidth * u) return;
  const size_t index = size_t(std::clamp(sheet.frame.stage, 0, int(stages.size()) - 1));
  Caption caption{std::to_string(index + 1) + "  " + stages[index].name,
                  captionParts(stages[index])};
  if (auto course = coursePart(sheet, index))
    caption.parts.insert(caption.parts.begin(), std::move(*course));
  if (!sheet.options.piece.empty())
    caption.parts.insert(caption.parts.begin(),
                         {sheet.options.piece, ink::kInk, Cut::Bold, CaptionPart::Mark::None});
  // Long words on a small sheet are written smaller before they run into the drawing.
  const float room = std::max(sheet.layout.drawing.top - u - box.top, 60 * u);
  Pen pen = sheet.pen;
  glm::vec2 size = drawCaption(pen, caption, box, true);
  for (float factor = 0.97f; size.y > room && factor >= 0.7f; factor -= 0.03f) {
    pen = sheet.pen.sized(factor);
    size = drawCaption(pen, caption, box, true);
  }
  // Paper behind the words, so that a tall building does not run through them.
  const Box paper =
      Box::at({box.left - 10 * u, box.top - 6 * u}, {size.x + 20 * u, size.y + 6 * u});
  sheet.pen.fill(paper, ink::kPaper, 0.88f);
  sheet.taken.push_back(paper);
  sheet.furniture.push_back(paper);
  sheet.over.push_back(paper);
  drawCaption(pen, caption, box, false);
}

}  // namespace viewer
