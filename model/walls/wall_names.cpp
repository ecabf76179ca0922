#include "model/walls/wall_names.h"

#include "model/level_text.h"
#include "model/settingout/coursing.h"

namespace model {

std::string layerId(const WallLine& wall, const std::string& layer) {
  return "wall " + wall.name + "/" + layer;
}

std::string layerName(const WallLine& wall, const std::string& layer) {
  return "Wall " + wall.name + ", " + layer;
}

std::string liftId(const Job& job, const Lift& lift) {
  return job.storeys[static_cast<size_t>(lift.storey)].name + "/lift " +
         std::to_string(lift.number);
}

std::string liftName(const Job& job, const Lift& lift) {
  const std::string number = "lift " + std::to_string(lift.number);
  if (job.storeys.size() < 2) return number;
  return job.storeys[static_cast<size_t>(lift.storey)].name + " " + number;
}

std::string topCourseWords(const WallBuildUp& walls, double height) {
  constexpr double kLeastBlock = 0.040;  // a thinner one is no block: the bed makes it up
  const double left = cutBlockCourse(walls, height), block = left - walls.joint;
  if (left == 0) return "";
  return block < kLeastBlock ? ", " + lengthText(left) + " made up at the top"
                             : ", top blocks cut to " + lengthText(block);
}

}  // namespace model
