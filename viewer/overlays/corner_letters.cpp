// Letters of the corners in circles, beside the corners at the ground.
#include <algorithm>

#include <glm/geometric.hpp>
#include <glm/vec4.hpp>

#include "viewer/overlays/overlay_sheet.h"

namespace viewer {

void drawCornerLetters(OverlaySheet& sheet) {
  const model::SettingOut& out = sheet.model.settingOut;
  const Pen& pen = sheet.pen;
  const float u = pen.unit();
  const float radius = 13 * u;
  for (size_t i = 0; i < out.corners.size(); ++i) {
    const model::Corner& corner = out.corners[i];
    const model::WallLine& next = out.walls[i];
    const model::WallLine& last = out.walls[(i + out.walls.size() - 1) % out.walls.size()];
    const double ground = out.terrain.levelAt(corner.at);
    const model::Vec2 away = glm::normalize(next.outward + last.outward + 1e-9 * next.along);
    const model::Vec2 beside = corner.at + away * 0.9;
    const glm::vec3 foot = sheet.scene.local({beside, ground});
    const Section& section = sheet.frame.section;
    if (section.on && glm::dot(section.plane, glm::vec4(foot, 1)) > 0) continue;  // cut away
    const auto at = sheet.onSheet(foot);
    if (!at || !sheet.layout.sheet.grown(-radius).contains(*at)) continue;
    const Box box = Box::at(*at - radius, glm::vec2(2 * radius));
    if (std::any_of(sheet.taken.begin(), sheet.taken.end(),
                    [&](const Box& taken) { return taken.overlaps(box); }))
      continue;
    sheet.taken.push_back(box);
    // Behind something the ring is faint; the letter stays readable.
    const bool behind = sheet.hidden(foot + glm::vec3(0, 0, 0.3f));
    pen.list()->AddCircleFilled(im(*at), radius, colour(ink::kCard, behind ? 0.75f : 0.92f));
    pen.list()->AddCircle(im(*at), radius, colour(ink::kInk, behind ? 0.35f : 1.0f), 0, 1.5f * u);
    const Cut cut = behind ? Cut::Text : Cut::Bold;
    const Pen fit = pen.fitted(corner.letter, 1.6f * radius, cut);
    const glm::vec2 size = fit.size(corner.letter, cut);
    fit.text(*at - size * 0.5f, behind ? ink::kSoft : ink::kInk, corner.letter, cut);
  }
}

}  // namespace viewer
