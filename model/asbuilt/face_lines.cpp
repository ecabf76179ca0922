#include "model/asbuilt/face_lines.h"

#include <algorithm>
#include <cmath>

#include <glm/geometric.hpp>

#include "model/asbuilt/words.h"
#include "model/job/reading_targets.h"

namespace model {

namespace {

constexpr double kSpanGives = 0.005;

// "4 to 9 wider", "3 narrower to 2 wider".
std::string widthText(double least, double most) {
  const auto one = [](double change) {
    const std::string amount = lengthText(std::abs(change));
    return amount == "0" ? "as drawn" : amount + (change > 0 ? " wider" : " narrower");
  };
  const std::string a = one(least), b = one(most);
  return a == b ? a : a + " to " + b;
}

void describe(const SettingOut& out, const Allowed& allowed, FaceAsBuilt& face) {
  const WallLine& wall = out.walls[face.wall];
  const std::string skew = lengthText(std::abs(face.skew)), bow = lengthText(std::abs(face.bow));
  face.words = std::string(findReadingTarget(face.target)->words) + " of " + wall.name + ": ";
  if (skew == "0" && bow == "0") {
    face.words += "straight and parallel to its line";
    return;
  }
  if (skew != "0")
    face.words += skew + (face.skew > 0 ? " further out at " : " further in at ") +
                  out.corners[wall.to].letter;
  if (bow != "0")
    face.words += (skew == "0" ? "" : ", ") + std::string(face.bow > 0 ? "bulges " : "hollow by ") +
                  bow + " at " + lengthText(face.bowAt) + " from " + out.corners[wall.from].letter;
  const auto over = [&](double off) { return judge(off, allowed) == Verdict::Out; };
  face.changes = over(face.skew) || over(face.bow);
  if (face.changes) face.words += ": more than is allowed, ask before building on";
}

}  // namespace

std::vector<FaceAsBuilt> deriveFaceLines(const Job& job, const SettingOut& settingOut,
                                         const std::vector<Deviation>& deviations) {
  std::vector<FaceAsBuilt> faces;
  for (size_t wall = 0; wall < settingOut.walls.size(); ++wall) {
    for (const std::string& target : readingTargetNames(TargetKind::Line)) {
      const WallProfile profile = profileOf(settingOut, deviations, wall, target);
      if (profile.size() < 2 || profile.back().s - profile.front().s < 0.1) continue;
      FaceAsBuilt face;
      face.wall = wall;
      face.target = target;
      face.skew = profile.back().off - profile.front().off;
      const WallProfile ends{profile.front(), profile.back()};
      for (const AlongWall& point : profile) {
        const double off = point.off - heldAt(ends, point.s);
        if (std::abs(off) <= std::abs(face.bow) + 1e-9) continue;
        face.bow = off;
        face.bowAt = point.s;
      }
      describe(settingOut, allowedFor(job, target, settingOut.walls[wall].length), face);
      faces.push_back(std::move(face));
    }
  }
  return faces;
}

std::vector<SpanAsBuilt> deriveSpans(const SettingOut& settingOut,
                                     const std::vector<Deviation>& deviations) {
  std::vector<SpanAsBuilt> spans;
  const auto& walls = settingOut.walls;
  for (size_t i = 0; i < walls.size(); ++i) {
    const WallProfile mine = profileOf(settingOut, deviations, i, "inner-face");
    for (size_t j = i + 1; j < walls.size() && !mine.empty(); ++j) {
      const bool inside = glm::dot(walls[j].start - walls[i].start, walls[i].outward) < 0;
      if (glm::dot(walls[i].outward, walls[j].outward) > -1 + 1e-6 || !inside) continue;
      const WallProfile its = profileOf(settingOut, deviations, j, "inner-face");
      SpanAsBuilt span{i, j, 1e300, -1e300, "", false};
      const auto look = [&](const WallProfile& from, size_t a, const WallProfile& to, size_t b) {
        for (const AlongWall& point : from) {
          const Vec2 at = walls[a].at(point.s);
          const auto other = between(to, glm::dot(at - walls[b].start, walls[b].along));
          if (!other) continue;
          span.least = std::min(span.least, point.off + *other);
          span.most = std::max(span.most, point.off + *other);
        }
      };
      look(mine, i, its, j);
      look(its, j, mine, i);
      if (span.least > span.most) continue;
      span.words = walls[i].name + " to " + walls[j].name + ": " +
                   widthText(span.least, span.most) + " inside";
      span.changes = std::max(std::abs(span.least), std::abs(span.most)) >= kSpanGives - 1e-9;
      if (span.changes) span.words += "; cut joists to their own span, not to the drawing";
      spans.push_back(std::move(span));
    }
  }
  return spans;
}

}  // namespace model
