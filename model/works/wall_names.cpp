#include "model/works/wall_names.h"

#include <cctype>

namespace model {

std::string layerId(const WallLine& wall, const std::string& layer) {
  return "wall " + wall.name + "/" + layer;
}

std::string layerName(const WallLine& wall, const std::string& layer) {
  return "Wall " + wall.name + ", " + layer;
}

std::string liftId(const Lift& lift) {
  return "storey " + std::to_string(lift.storey) + "/lift " + std::to_string(lift.number);
}

std::string liftName(const Job& job, const Lift& lift) {
  const std::string number = "lift " + std::to_string(lift.number);
  if (job.storeys.size() < 2) return number;
  return inSentence(job.storeys[static_cast<size_t>(lift.storey)].name) + " " + number;
}

std::string inSentence(const std::string& name) {
  const auto upper = [&](size_t i) {
    return i < name.size() && std::isupper(static_cast<unsigned char>(name[i])) != 0;
  };
  std::string text = name;
  if (upper(0) && !upper(1)) {
    text[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(text[0])));
  }
  return text;
}

}  // namespace model
