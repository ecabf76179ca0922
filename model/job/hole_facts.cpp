#include "model/job/hole_facts.h"

#include "model/job/job_names.h"

namespace model {

std::vector<HoleFacts> knownHoles(const Validation& v, const PlanFacts& plan, size_t wall) {
  std::vector<HoleFacts> holes;
  for (size_t i = 0; i < v.job.openings.size(); ++i) {
    const Opening& opening = v.job.openings[i];
    const std::string path = "opening[" + std::to_string(i) + "]";
    if (wallNamed(opening.wall, plan.corners()) != wall) continue;
    bool known = true;
    for (const char* key : {".at", ".width", ".from", ".sill", ".head", ".storey"})
      known = known && v.known.has(path + key);
    const auto storey = static_cast<size_t>(opening.storey);
    if (!known || storey >= v.job.storeys.size() || !v.known.storeyFloor(storey)) continue;
    HoleFacts hole;
    hole.opening = &opening;
    hole.name = opening.name.empty() ? "opening " + std::to_string(i + 1)
                                     : "opening \"" + opening.name + "\"";
    const bool fromStart = opening.from == letterOfCorner(wall);
    hole.from = fromStart ? opening.at : plan.length[wall] - opening.at - opening.width;
    hole.to = hole.from + opening.width;
    const double floor = v.job.storeys[storey].floor;
    hole.sill = opening.sill.value_or(floor + (opening.kind == OpeningKind::Window ? 1.050 : 0));
    hole.head = opening.head.value_or(floor + 2.100);
    holes.push_back(std::move(hole));
  }
  return holes;
}

}  // namespace model
