// The rows of the key table, section by section; key_table.cpp joins them.
#pragma once

#include <vector>

#include "model/job/key_table.h"

namespace model {

std::vector<KeySpec> jobKeys();
std::vector<KeySpec> siteKeys();
std::vector<KeySpec> surveyKeys();  // further bench marks, the site's grid
std::vector<KeySpec> groundKeys();
std::vector<KeySpec> outlineKeys();
std::vector<KeySpec> storeyKeys();
std::vector<KeySpec> wallKeys();
std::vector<KeySpec> builtInKeys();  // ties, boards and the rest: walls too
std::vector<KeySpec> foundationKeys();
std::vector<KeySpec> cellarKeys();
std::vector<KeySpec> floorKeys();
std::vector<KeySpec> openingKeys();
std::vector<KeySpec> stairKeys();
std::vector<KeySpec> airBrickKeys();
std::vector<KeySpec> cavityBarrierKeys();
std::vector<KeySpec> dampCourseStepKeys();
std::vector<KeySpec> corbelKeys();
std::vector<KeySpec> junctionKeys();
std::vector<KeySpec> movementJointKeys();
std::vector<KeySpec> gardenWallKeys();
std::vector<KeySpec> roofKeys();
std::vector<KeySpec> layingKeys();
std::vector<KeySpec> programmeKeys();
std::vector<KeySpec> stageViewKeys();   // from where stages are looked at
std::vector<KeySpec> stageKeys();       // what the job says otherwise of stages
std::vector<KeySpec> settingOutKeys();  // and limits
std::vector<KeySpec> setUpKeys();
std::vector<KeySpec> readingKeys();  // tolerances and questions too

}  // namespace model
