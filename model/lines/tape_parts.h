// The steps of deriveTapeChecks. Private to this folder.
#pragma once

#include "model/lines/tape.h"

namespace model {

CornerTriangle cornerTriangle(const SettingOut& settingOut, size_t corner, double tape);

Tape tapeBetween(const SettingOut& settingOut, size_t from, size_t to, double tapeLength);

// Every corner but the two of the base wall, in an order in which each has its two.
std::vector<TapeFix> tapeFixes(const SettingOut& settingOut, size_t base, double tapeLength);

}  // namespace model
