// The stage in large plain words, along the foot of the sheet.
#include <algorithm>

#include "model/drawing/client_words.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kHeading = 1.7f, kWords = 1.35f;  // times the sheet's own letters

std::string whenWords(const model::Stage& stage) {
  if (stage.start.empty()) return "";
  if (stage.start == stage.finish) return dateWords(stage.start);
  return dateWords(stage.start) + " to " + dateWords(stage.finish);
}

struct Words {
  std::string heading, when, what, notice, decision;
};

float draw(const OverlaySheet& sheet, const Words& words, const Box& box, float factor,
           bool measureOnly) {
  const Pen head = sheet.pen.sized(kHeading * factor), body = sheet.pen.sized(kWords * factor);
  const float u = sheet.pen.unit() * factor;
  float y = box.top;
  const float when = body.size(words.when, Cut::Bold).x;
  if (!measureOnly) {
    head.text({box.left, y}, ink::kInk,
              head.shortened(words.heading, box.width() - when - 30 * u, Cut::Heading),
              Cut::Heading);
    body.text({box.right - when, y + head.lineHeight(Cut::Heading) - body.lineHeight()}, ink::kInk,
              words.when, Cut::Bold);
  }
  y += head.lineHeight(Cut::Heading) * 1.25f;
  const auto paragraph = [&](const std::string& text, Cut cut) {
    if (text.empty()) return;
    y += body.paragraph({box.left, y}, box.width(), ink::kInk, text, cut, measureOnly) + 7 * u;
  };
  paragraph(words.what, Cut::Text);
  paragraph(words.notice, Cut::Text);
  paragraph(words.decision, Cut::Bold);
  return y - box.top;
}

}  // namespace

void drawClientWords(OverlaySheet& sheet) {
  const auto& stages = sheet.model.programme.stages;
  if (stages.empty()) return;
  const size_t index = size_t(std::clamp(sheet.frame.stage, 0, int(stages.size()) - 1));
  const model::Stage& stage = stages[index];
  const model::ClientStage told = model::clientStage(sheet.model, index);
  Words words;
  words.heading = told.title;
  words.when = whenWords(stage);
  words.what = told.what;
  const std::string notice = stage.notice.empty() ? told.notice : stage.notice;
  if (!notice.empty()) words.notice = "You will notice: " + notice;
  if (!stage.decision.empty()) words.decision = "To be decided by then: " + stage.decision;
  const Box room = clientBox(sheet.layout.sheet);
  const float u = sheet.pen.unit(), pad = 22 * u;
  const Box inside{room.left + pad * 1.6f, room.top + pad, room.right - pad * 1.6f,
                   room.bottom - pad * 0.7f};
  sheet.pen.fill(room, ink::kCard);
  sheet.pen.line({room.left, room.top}, {room.right, room.top}, ink::kInk, 2);
  float factor = 1;
  while (factor > 0.5f && draw(sheet, words, inside, factor, true) > inside.height())
    factor -= 0.04f;
  draw(sheet, words, inside, factor, false);
  // How far along all of it one is.
  const float done = float(std::clamp(sheet.frame.time / double(stages.size()), 0.0, 1.0));
  sheet.pen.fill({room.left, room.bottom - 7 * u, room.right, room.bottom}, ink::kTape);
  sheet.pen.fill({room.left, room.bottom - 7 * u, room.left + room.width() * done, room.bottom},
                 ink::kInk);
}

Box clientBox(const Box& sheet) {
  constexpr float kShare = 0.27f;
  return {sheet.left, sheet.bottom - sheet.height() * kShare, sheet.right, sheet.bottom};
}

}  // namespace viewer
