// One layer of one wall (a leaf, the insulation, the cavity's fill), and how its elevation becomes
// a solid with mitred ends.
#pragma once

#include <vector>

#include "model/settingout/setting_out.h"
#include "model/walls/elevation.h"

namespace model {

// A place on both faces of a layer: s and z on each.
struct FacePair {
  Vec2 front{0, 0}, back{0, 0};
};

struct WallLayer {
  const WallLine* wall = nullptr;
  double outer = 0, inner = 0;  // metres inside the outer face of the finished masonry
  // Where the mitres fall on the two faces (s), at the wall's start and end.
  double startFront = 0, startBack = 0, endFront = 0, endBack = 0;
  // The length over which the layer has its whole thickness. In elevations the layer runs from
  // `from` to `to`; its solids run on to the mitres.
  double from = 0, to = 0;

  // Adds the shell of one rectangle to a solid: quicker than solid() where there are many.
  void addBox(const Rect& r, Solid& solid) const;

  double thickness() const { return inner - outer; }
  bool empty() const { return thickness() < 1e-6 || to - from < 1e-3; }
  // The part of it from s0 to s1, with its mitres where those are its ends.
  WallLayer between(double s0, double s1) const;
  // The place of an elevation's point: at `from` and `to` on the mitres, else square through.
  FacePair through(const Vec2& point) const;
  // The solid of an elevation within [from, to]; each part is one shell.
  Solid solid(const Regions& elevation) const;
  // The same with the place of every point given, in regionPoints order.
  Solid solid(const Region& elevation, const std::vector<FacePair>& places) const;
};

// The layer from end to end of its wall's outer face, without mitres.
WallLayer squared(WallLayer layer);

WallLayer layerOf(const SettingOut& settingOut, size_t wall, double outer, double inner);
// The same in walls that go round one after another; they must outlive the layer.
WallLayer layerIn(const std::vector<WallLine>& walls, size_t wall, double outer, double inner);

}  // namespace model
