// String lines from profile to profile; one name for each pair of boards.
#include <algorithm>
#include <map>

#include <glm/geometric.hpp>

#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

bool pulled(const OverlaySheet& sheet, const model::StringLine& line) {
  const auto& programme = sheet.model.programme;
  const double time = sheet.frame.time;
  if (model::timeAt(programme, line.placed, line.a) > time) return false;
  return !line.removed || model::timeAt(programme, *line.removed, line.a) > time;
}

// The strings of one wall, which run between the same two boards.
struct Group {
  std::vector<std::string> names;
  glm::vec3 a{0}, b{0};  // middles of their ends, once divided by the count
};

void keepClear(OverlaySheet& sheet, const glm::vec3& a, const glm::vec3& b) {
  constexpr int kPieces = 8;  // in perspective the ends may lie behind the eye
  for (int i = 0; i < kPieces; ++i) {
    const auto from = sheet.onSheet(glm::mix(a, b, float(i) / kPieces));
    const auto to = sheet.onSheet(glm::mix(a, b, float(i + 1) / kPieces));
    if (from && to) sheet.keepClear(*from, *to);
  }
}

void askForName(OverlaySheet& sheet, const Group& group, bool otherEnd) {
  const float count = float(group.names.size());
  const glm::vec3 a = group.a / count, b = group.b / count;
  // The name stands at the end that is nearer the eye; in plan, at alternate ends.
  const glm::vec3 eye = sheet.frame.camera.eye();
  const bool aNear =
      isPlan(sheet.frame.camera) ? otherEnd : glm::distance(a, eye) <= glm::distance(b, eye);
  const auto near = sheet.onSheet(aNear ? a : b), far = sheet.onSheet(aNear ? b : a);
  if (!near || !far) return;
  const std::string name = stringGroupName(group.names);
  LabelRequest request;
  const float length = glm::distance(*near, *far);
  if (length < 1) return;
  // Past the board across the strings' ends.
  const glm::vec2 past = (*near - *far) * (13 * sheet.pen.unit() / length);
  request.anchor = *near + past;
  request.size = sheet.pen.size(name);
  request.towards = past;
  request.others.push_back({*far - past, -past});
  request.priority = 1;
  sheet.ask(request, {name, ink::kStringWords, 1, true, Cut::Text});
}

}  // namespace

void drawStringLines(OverlaySheet& sheet, bool named) {
  std::map<std::string, Group> groups;
  for (const model::StringLine& line : sheet.model.works.strings) {
    if (!pulled(sheet, line)) continue;
    const glm::vec3 a = sheet.scene.local(line.a), b = sheet.scene.local(line.b);
    sheet.spaceLine(a, b, ink::kStrings, 1.6f, 24);
    keepClear(sheet, a, b);
    Group& group = groups[line.name.substr(0, line.name.find(' '))];
    group.names.push_back(line.name);
    group.a += a;
    group.b += b;
  }
  if (!named) return;
  bool otherEnd = false;
  for (const auto& [wall, group] : groups) askForName(sheet, group, otherEnd = !otherEnd);
}

}  // namespace viewer
