// The stage's name and words, top left.
#include <algorithm>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {
namespace {

struct Paragraph {
  std::string text;
  unsigned rgb;
  Cut cut;
  enum class Mark { None, Caution, Hold } mark;
};

std::vector<Paragraph> paragraphs(const model::Stage& stage) {
  using Mark = Paragraph::Mark;
  std::vector<Paragraph> all;
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

float drawParagraph(const Pen& pen, const Paragraph& p, const glm::vec2& at, float width,
                    bool measureOnly) {
  const float u = pen.unit();
  const float indent = p.mark == Paragraph::Mark::None ? 0 : 24 * u;
  const float used =
      pen.paragraph(at + glm::vec2(indent, 0), width - indent, p.rgb, p.text, p.cut, measureOnly);
  if (!measureOnly) {
    const glm::vec2 middle = at + glm::vec2(8 * u, pen.lineHeight() * 0.52f);
    if (p.mark == Paragraph::Mark::Caution) pen.caution(middle, 7.5f * u);
    if (p.mark == Paragraph::Mark::Hold) pen.diamond(middle, 7 * u, ink::kCard, ink::kInk);
  }
  return used;
}

}  // namespace

void drawCaptions(OverlaySheet& sheet) {
  const auto& stages = sheet.model.programme.stages;
  if (stages.empty()) return;
  const size_t index = size_t(std::clamp(sheet.frame.stage, 0, int(stages.size()) - 1));
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  Box box = sheet.layout.captions;
  // Beside a column of levels the words take a narrower measure.
  if (sheet.levelsShown)
    if (const auto column = levelColumnLeft(sheet))
      box.right =
          std::clamp(*column - 26 * u, box.left + std::min(380 * u, box.width()), box.right);
  const std::string heading = std::to_string(index + 1) + "  " + stages[index].name;
  const std::string shownHeading = pen.shortened(heading, box.width(), Cut::Heading);
  const auto all = paragraphs(stages[index]);
  float height = pen.lineHeight(Cut::Heading) * 1.3f,
        width = pen.size(shownHeading, Cut::Heading).x;
  for (const Paragraph& p : all) {
    height += drawParagraph(pen, p, {0, 0}, box.width(), true) + 4 * u;
    width = std::max(width, std::min(box.width(), pen.size(p.text, p.cut).x + 24 * u));
  }
  // Paper behind the words, so that a tall building does not run through them.
  const Box paper = Box::at({box.left - 10 * u, box.top - 6 * u}, {width + 20 * u, height + 8 * u});
  pen.fill(paper, ink::kPaper, 0.86f);
  sheet.taken.push_back(paper);
  sheet.furniture.push_back(paper);
  glm::vec2 at{box.left, box.top};
  pen.text(at, ink::kInk, shownHeading, Cut::Heading);
  at.y += pen.lineHeight(Cut::Heading) * 1.3f;
  for (const Paragraph& p : all) at.y += drawParagraph(pen, p, at, box.width(), false) + 4 * u;
}

}  // namespace viewer
