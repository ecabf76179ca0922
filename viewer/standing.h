// The levelling instrument that is read from: one of the job's set-ups, or one stood by hand.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/levelling/set_up.h"
#include "model/settingout/setting_out.h"

namespace viewer {

// What an instrument that is stood by hand is called.
inline constexpr char kByHand[] = "By hand";

// The level that is to be made, against which others are cut or fill.
struct WantedLevel {
  std::string name;  // "top of concrete"; empty: the level plane's
  double level = 0;
};

// "sill, Hall window".
std::string nameOf(const model::ScheduledLevel& level);

// On the job's main bench mark, with a tripod of the usual height over this ground; nothing where
// there is no mark. A negative backsight is on a staff held upside down: the line is under the
// mark.
std::optional<model::SetUp> standByHand(const model::Job& job, const model::Vec2& at,
                                        double ground);

// The job's next set-up after this one; none after the last.
std::optional<model::SetUp> nextSetUp(const model::Job& job,
                                      const std::optional<model::SetUp>& now);

// The same instrument in a job that has been read again: the job's own as it says now, one stood by
// hand as it was. Nothing where that set-up or its mark is gone.
std::optional<model::SetUp> sameSetUp(const model::Job& job,
                                      const std::optional<model::SetUp>& before);

// "2.410", "-0.665" on a staff held upside down, "too low", "too high".
std::string shortReading(const model::Instrument& instrument, double level);

// How a level that cannot be read from there is carried to the building's nearest corner: what to
// do, line by line. Nothing when it can be read.
std::vector<std::string> carryWords(const model::Job& job, const model::SettingOut& settingOut,
                                    const model::SetUp& setUp, double level);

// What is said of a point under the pointer, the most wanted first: "cut 25 to top of concrete",
// "level -0.875", "staff 2.065" or "too low for a 5 m staff".
std::vector<std::string> pointWords(double level, const std::optional<model::Instrument>& from,
                                    const std::optional<WantedLevel>& wanted);

}  // namespace viewer
