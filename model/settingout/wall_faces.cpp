#include "model/settingout/wall_faces.h"

#include "model/settingout/derive.h"

namespace model {

namespace {

FaceDistances distancesOf(const Job& job) {
  const WallBuildUp& walls = job.walls;
  const double total = walls.total(), width = job.foundations.width;
  FaceDistances in;
  in.finishedFace = -walls.render;
  in.outerLeafBack = walls.outerLeaf;
  in.innerLeafFront = walls.outerLeaf + walls.cavity;
  in.innerFace = total;
  in.foundationOuter = (total - width) / 2;
  in.foundationInner = (total + width) / 2;
  return in;
}

struct FaceKind {
  const char* name;
  double FaceDistances::*distance;
  FaceLine WallFaces::*line;
};

constexpr FaceKind kFaces[] = {
    {"outer face", &FaceDistances::outerFace, &WallFaces::outerFace},
    {"back of outer leaf", &FaceDistances::outerLeafBack, &WallFaces::outerLeafBack},
    {"front of inner leaf", &FaceDistances::innerLeafFront, &WallFaces::innerLeafFront},
    {"inner face", &FaceDistances::innerFace, &WallFaces::innerFace},
    {"foundation outer edge", &FaceDistances::foundationOuter, &WallFaces::foundationOuter},
    {"foundation inner edge", &FaceDistances::foundationInner, &WallFaces::foundationInner},
};

}  // namespace

void deriveFaces(const Job& job, SettingOut& out) {
  out.faceDistances = distancesOf(job);
  out.faces.resize(out.walls.size());
  for (const FaceKind& kind : kFaces) {
    const double inward = out.faceDistances.*kind.distance;
    const Polygon ring = out.ring(inward);
    for (size_t i = 0; i < out.walls.size(); ++i) {
      const WallLine& wall = out.walls[i];
      out.faces[i].*kind.line = {kind.name, inward, ring[wall.from], ring[wall.to]};
    }
  }
}

}  // namespace model
