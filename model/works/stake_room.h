// Where a stake can be driven for setting out: on the site, out of the dig and of what stands.
#pragma once

#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/plan_shapes.h"

namespace model {

class StakeRoom {
 public:
  StakeRoom(const Job& job, const SettingOut& settingOut);

  // On the site, in no building that stays, and clear of everything taken before.
  bool canStand(const Polygon& figure) const;
  // Off the dig with its working space, by a little; by as much as the job asks for.
  bool isOutOfDig(const Polygon& figure) const { return !meets(dig_, figure); }
  bool isClearOfDig(const Polygon& figure) const { return !meets(clearOfDig_, figure); }
  // A point over which a string can be pulled: on the site, in no building that stays.
  bool isOpen(const Vec2& p) const;
  // The whole of a string from a to b can be pulled.
  bool isOpen(const Vec2& a, const Vec2& b) const;
  // Nothing stands there from now on, nor within a hand of it.
  void take(const Polygon& figure);

 private:
  // With its box: most figures that are asked about are nowhere near.
  struct Taken {
    Polygon outline;
    Vec2 low, high;
    bool mayMeet(const Taken& other) const;
  };
  static Taken boxed(Polygon outline);
  static bool meets(const std::vector<Taken>& places, const Polygon& figure);

  const Regions site_;
  std::vector<Taken> dig_, clearOfDig_, buildings_;
  std::vector<Taken> taken_;
};

}  // namespace model
