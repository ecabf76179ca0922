// What faces out of line do to a wall: its cavity, and what its inner leaf leaves to bear on.
#pragma once

#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"

namespace model {

struct WallWidth {
  double s = 0;  // metres along the wall from its start
  double width = 0;
};

// From readings of both sides; a leaf whose cavity side was not read is taken to be as thick as
// drawn behind the face that was. Only between readings.
struct CavityAsBuilt {
  size_t wall = 0;
  double drawn = 0;
  std::vector<WallWidth> widths;  // wherever one of its sides was read
  WallWidth least, most;
  bool insulationFits = true;  // boards as thick as drawn, everywhere
  bool clearEnough = true;     // 50 clear beside them (NHBC Good Craftsmanship Guide, Brickwork),
                               // or as much as drawn
  // Length of a tie that beds 50 in both leaves at the widest (the same guide).
  double tieLength = 0;
  std::string words;
  bool changes = false;  // something must be done
};

// Of the inner leaf: joists and lintels have its thickness to bear on, the plate what of it lies
// under the plate as drawn.
struct BearingAsBuilt {
  size_t wall = 0;
  double leafDrawn = 0, plateDrawn = 0;
  WallWidth leastLeaf, leastPlate;
  bool leafRead = false;  // both its faces, so that leastLeaf is known
  std::string words;
  bool changes = false;
};

std::vector<CavityAsBuilt> deriveCavities(const Job& job, const SettingOut& settingOut,
                                          const std::vector<Deviation>& deviations);
std::vector<BearingAsBuilt> deriveBearings(const Job& job, const SettingOut& settingOut,
                                           const std::vector<Deviation>& deviations);

}  // namespace model
