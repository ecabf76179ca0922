// The steps of deriveSettingOut, in order; each fills its part of SettingOut from what stands
// before it. Private to this folder, apart from tests.
#pragma once

#include <optional>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

void deriveOutline(const Job& job, SettingOut& out);   // corners, walls, outline, tanPitch
void deriveFaces(const Job& job, SettingOut& out);     // faceDistances, faces
void deriveOpenings(const Job& job, SettingOut& out);  // openings
void deriveRoof(const Job& job, SettingOut& out);      // eavesOutline, roof
void deriveLevels(const Job& job, SettingOut& out);    // terrain, levels, commonHead
void deriveRuns(const Job& job, SettingOut& out);      // cellarOutline, foundations
void deriveLifts(const Job& job, SettingOut& out);     // lifts
void deriveStairs(const Job& job, SettingOut& out);    // stairs
void deriveSchedule(const Job& job, SettingOut& out);  // schedule

// Where trench fill with its top at `top` ends when the job leaves its thickness open: in good
// ground under the lowest of the ground over it.
double trenchFillBottom(const Job& job, double groundLow, double top);

// The nearest whole course (from `datum`, `course` high) at, or at or under a level; levels within
// a micrometre of a course count as on it.
double courseNear(double level, double datum, double course);
double courseAtOrUnder(double level, double datum, double course);

}  // namespace model
