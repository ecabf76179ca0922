// Lists and levels as sentences have them; private to this folder.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

using Facts = std::map<std::string, std::string>;

// "a", "a and b", "a, b and c".
std::string inSeries(const std::vector<std::string>& parts);
// Each different level once, highest first; "its level" when there is none.
std::string levelsInSeries(std::vector<double> levels);

// To a tenth: "40", "26.6".
std::string degreesText(double degrees);

// The sides that no scaffold reaches, "B-C, part of C-D and E-F"; empty when there are none.
std::string bareSidesInWords(const Job& job, const SettingOut& settingOut);

// Lean concrete that carries a foundation down to firm ground beside the cellar.
bool isLeanFill(const Element& element);

// Where walls are joined to standing buildings: what is done first, sentence by sentence with a
// space before each, and what is minded.
using StageTexts = std::map<StageKey, std::string>;
StageTexts junctionWork(const Job& job, const SettingOut& settingOut);
StageTexts junctionCautions(const Job& job, const SettingOut& settingOut);

// The same where courses of house walls stand out.
StageTexts corbelWork(const Job& job, const SettingOut& settingOut);
StageTexts corbelCautions(const Job& job, const SettingOut& settingOut);
// Of a stair in its own stage, and of its well in that of the floor; nothing for another name.
std::optional<std::string> stairFact(const std::string& name, const StageKey& key, const Job& job,
                                     const SettingOut& settingOut);

// Facts of the ground, the cellar and the foundations; of garden walls; of the ground floor, roof
// and openings.
void addGroundFacts(const Job& job, const SettingOut& settingOut, const Works& works, Facts& facts);
void addGardenFacts(const Job& job, const Works& works, Facts& facts);
void addBuildingFacts(const Job& job, const SettingOut& settingOut, const Works& works,
                      Facts& facts);

}  // namespace model
