// Corners, walls and openings as the drawing names them, turned anticlockwise.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/settingout/derive.h"
#include "model/settingout/wall_ring.h"

namespace model {

namespace {

// Names of the wall's two corners in its name, "A-B" to "A" and "B".
std::string firstCorner(const std::string& wall) { return wall.substr(0, wall.find('-')); }

double orElse(const std::optional<double>& value, double fallback) {
  return value ? *value : fallback;
}

}  // namespace

std::string cornerLetter(size_t index) {
  std::string letters;
  for (size_t left = index + 1; left > 0; left = (left - 1) / 26) {
    letters.insert(letters.begin(), static_cast<char>('A' + (left - 1) % 26));
  }
  return letters;
}

void deriveOutline(const Job& job, SettingOut& out) {
  const size_t n = job.outline.size();
  const bool clockwise = signedArea(job.outline) < 0;
  // File index of corner i of the anticlockwise outline; A stays first either way.
  const auto inFile = [&](size_t i) { return clockwise ? (n - i % n) % n : i % n; };
  for (size_t i = 0; i < n; ++i) out.outline.push_back(job.outline[inFile(i)]);
  std::vector<std::string> letters;
  for (size_t i = 0; i < n; ++i) letters.push_back(cornerLetter(inFile(i)));
  WallRing ring = wallRing(out.outline, letters);
  out.corners = std::move(ring.corners);
  out.walls = std::move(ring.walls);
  if (clockwise) {
    for (WallLine& wall : out.walls)
      wall.name = out.corners[wall.to].letter + "-" + out.corners[wall.from].letter;
  }
  for (const RoofEdge& edge : job.roof.edges) {
    if (const auto wall = out.wallNamed(edge.wall)) out.walls[*wall].eaves = edge.kind;
  }
  out.tanPitch = std::tan(job.roof.pitch * std::numbers::pi / 180);
}

void deriveOpenings(const Job& job, SettingOut& out) {
  // Sill and head of an opening that does not give them, above its storey's floor: common
  // practice, no source; both whole brick courses.
  constexpr double kWindowSill = 1.050, kHead = 2.100;
  for (size_t i = 0; i < job.openings.size(); ++i) {
    const Opening& opening = job.openings[i];
    const auto wall = out.wallNamed(opening.wall);
    if (!wall) continue;
    BuiltOpening built;
    built.jobIndex = i;
    built.name = opening.name;
    built.kind = opening.kind;
    built.wall = *wall;
    built.storey = std::clamp(opening.storey, 0, static_cast<int>(job.storeys.size()) - 1);
    const WallLine& line = out.walls[*wall];
    const std::string from = opening.from.empty() ? firstCorner(opening.wall) : opening.from;
    const bool fromStart = from == out.corners[line.from].letter;
    built.s0 = fromStart ? opening.at : line.length - opening.at - opening.width;
    built.s1 = built.s0 + opening.width;
    const double floor = job.storeys[static_cast<size_t>(built.storey)].floor;
    built.sill =
        orElse(opening.sill, floor + (opening.kind == OpeningKind::Window ? kWindowSill : 0));
    built.head = orElse(opening.head, floor + kHead);
    out.openings.push_back(built);
  }
}

}  // namespace model
