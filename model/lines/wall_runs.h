// Each wall's line against the site: how far from the boundary and from what stands, and which
// lines are parallel.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

// From a point of a wall's finished face (its render's, where there is any) by the shortest way.
struct FaceDistance {
  double running = 0;  // of the point along the face, from the wall's first corner
  Vec2 from{0, 0}, at{0, 0};
  double distance = 0;
};

// From one wall to something in front of it. Of the boundary only what lies straight ahead of the
// wall counts, between its two ends; of a building all that is ahead of the wall's line.
struct LineToSite {
  std::string to;  // "boundary 2" (its sides count from its first corner), a building's name
  FaceDistance atStart, atEnd, nearest;
  // Square to the wall from its two ends, where that meets it.
  std::optional<double> squareAtStart, squareAtEnd;
};

struct SetOutLine {
  size_t wall = 0;
  double length = 0;  // of the outer face
  // To the boundary, where the job gives one, and to the nearest building that stays.
  std::optional<LineToSite> boundary, building;
};

// From one side of a ring round the building (SettingOut::ring, eavesOutline), `wall`'s. Nothing
// where the job gives no boundary, where nothing of the building is ahead.
std::optional<LineToSite> toBoundary(const Job& job, const SettingOut& settingOut, size_t wall,
                                     const Polygon& ring);
std::optional<LineToSite> toBuilding(const SettingOut& settingOut, size_t wall, const Polygon& ring,
                                     const StandingBuilding& building);

// By wall.
std::vector<SetOutLine> deriveWallRuns(const Job& job, const SettingOut& settingOut);

struct ParallelLine {
  size_t wall = 0;
  // Of its ends from the group's first line, square to that; the same when truly parallel. In the
  // order of the first line's own direction.
  double near = 0, far = 0;
};

// Walls within a degree of one another: meant to be parallel, or nearly so.
struct ParallelGroup {
  std::vector<ParallelLine> lines;  // the longest first, then by distance from it
  bool parallel = true;             // all within kParallel
};

// Groups of two walls and more, in order of their first lines.
std::vector<ParallelGroup> deriveParallels(const SettingOut& settingOut);

}  // namespace model
