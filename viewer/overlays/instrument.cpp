// The levelling instrument on its tripod at every set-up; from the one that is read from also the
// sight to its bench mark, with the staff there.
#include <array>
#include <cmath>

#include "model/level_text.h"
#include "model/levelling/staff_text.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/setting_out_lines.h"
#include "viewer/overlays/words.h"
#include "viewer/standing.h"

namespace viewer {
namespace {

constexpr float kUnderLine = 0.12f;  // metres from the line down to the tripod's head
constexpr float kSpread = 0.55f;     // of a leg's foot from the middle
constexpr float kTelescope = 0.16f;  // half its length

// What it stands on at this moment of the job: the ground, a slab, a floor.
std::optional<float> standsOn(const OverlaySheet& sheet, const glm::vec3& line) {
  if (!sheet.options.picker) return std::nullopt;
  const auto pick = sheet.options.picker->pick({line, {0, 0, -1}}, sheet.frame);
  const float most = float(model::Tripod{}.most) + 0.3f;
  if (pick && pick->along < most) return pick->point.z;
  // A section may have cut its ground away.
  const model::Vec3 at = sheet.scene.world(line);
  const double ground = sheet.model.settingOut.terrain.levelAt({at.x, at.y});
  if (!sheet.frame.section.on || at.z < ground || at.z - ground > double(most)) return std::nullopt;
  return sheet.scene.local({at.x, at.y, ground}).z;
}

struct Look {
  unsigned rgb = ink::kSoft;
  float width = 1.4f;
};

void drawTripod(OverlaySheet& sheet, const glm::vec3& line, float foot, const Look& look) {
  const glm::vec3 head = line - glm::vec3(0, 0, kUnderLine);
  for (const float turn : {0.52f, 2.62f, 4.71f}) {
    const glm::vec3 to{line.x + std::cos(turn) * kSpread, line.y + std::sin(turn) * kSpread, foot};
    settingOutLine(sheet, head, to, {look.rgb, look.width, 1, false});
  }
  settingOutLine(sheet, head, line, {look.rgb, look.width * 1.5f, 1, false});
  const glm::vec3 half{kTelescope, 0, 0};
  settingOutLine(sheet, line - half, line + half, {look.rgb, look.width * 3, 1, false});
  const auto at = sheet.onSheet(line);
  if (!at) return;
  const float r = 7 * sheet.pen.unit();
  sheet.taken.push_back(Box{at->x, at->y, at->x, at->y}.grown(r));
  if (isPlan(sheet.frame.camera))
    sheet.pen.list()->AddCircle(im(*at), r, colour(look.rgb), 0, look.width * sheet.pen.unit());
}

void askBeside(OverlaySheet& sheet, const glm::vec3& point, const std::string& words, unsigned rgb,
               int priority) {
  const auto at = sheet.onSheet(point);
  if (!at) return;
  LabelRequest request;
  const float off = 12 * sheet.pen.unit();
  request.anchor = *at - glm::vec2(0, off);
  request.size = sheet.pen.size(words);
  request.towards = {0, -1};
  for (const glm::vec2 side : {glm::vec2(1, 0), glm::vec2(-1, 0), glm::vec2(0, 1)})
    request.others.push_back({*at + side * off, side});
  request.priority = priority;
  sheet.ask(request, {words, rgb, 1, true, Cut::Text});
}

// The line of sight and the staff on the mark.
void drawBacksight(OverlaySheet& sheet, const model::SetUp& setUp, const model::BenchMark& mark,
                   const glm::vec3& line) {
  const glm::vec3 foot = sheet.scene.local({mark.at, mark.level});
  const glm::vec3 read{foot.x, foot.y, line.z};
  settingOutLine(sheet, line, read, {ink::kLevels, 1.2f, 1, true});
  const float top = std::max(read.z + 0.3f, foot.z + 1.0f);
  settingOutLine(sheet, foot, {foot.x, foot.y, top}, {ink::kLevels, 2.4f, 1, false});
  askBeside(sheet, foot,
            mark.name + " " + model::levelText(mark.level) + ", read " +
                model::staffText(setUp.backsight),
            ink::kLevelWords, 1);
}

void drawSetUp(OverlaySheet& sheet, const model::SetUp& setUp, bool readFrom) {
  const auto instrument = instrumentOf(sheet.model.job, setUp);
  const model::BenchMark* mark = markOf(sheet.model.job, setUp);
  if (!instrument || !mark) return;
  const glm::vec3 line = sheet.scene.local({setUp.at, instrument->collimation});
  const auto ground = standsOn(sheet, line);
  const float foot = ground.value_or(line.z - float(model::Tripod{}.usual));
  drawTripod(sheet, line, foot, readFrom ? Look{ink::kLevels, 2.2f} : Look{});
  if (readFrom) drawBacksight(sheet, setUp, *mark, line);
  std::string words = setUp.name + ", line " + model::levelText(instrument->collimation);
  if (!ground) words += ", nothing to stand on yet";
  askBeside(sheet, line, words, readFrom ? ink::kLevelWords : ink::kSoft, readFrom ? 4 : 0);
}

}  // namespace

void drawInstruments(OverlaySheet& sheet) {
  const std::optional<model::SetUp>& from = sheet.options.standing;
  for (const model::SetUp& setUp : sheet.model.job.setUps)
    if (!from || from->name != setUp.name) drawSetUp(sheet, setUp, false);
  if (from) drawSetUp(sheet, *from, true);
}

}  // namespace viewer
