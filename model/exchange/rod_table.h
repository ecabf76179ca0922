// Gauge rods as a table, and in words for people.
#pragma once

#include <string>
#include <vector>

#include "model/exchange/tables.h"
#include "model/settingout/gauge_rod.h"

namespace model {

// A row for every mark and for every course line without one, each rod from its top down.
Table rodsTable(const Model& model, const std::vector<GaugeRod>& rods);

// One sentence a rod, without its full stop.
std::vector<std::string> rodWords(const SettingOut& out, const std::vector<GaugeRod>& rods);

}  // namespace model
