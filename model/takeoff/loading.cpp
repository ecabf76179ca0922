#include "model/takeoff/loading.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "model/takeoff/laid_count.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

// Corners and the run between them are one lift.
StageKey liftOf(StageKey stage) {
  if (stage.kind == StageKind::RaiseCorners) stage.kind = StageKind::RunIn;
  return stage;
}

std::string nameOfLift(const Job& job, const StageKey& stage) {
  switch (stage.kind) {
    case StageKind::WallsBelowDampCourse:
      return "Below the damp course";
    case StageKind::Gables:
      return "Gables";
    default:
      return job.storeys[static_cast<size_t>(stage.storey)].name + ", lift " +
             std::to_string(stage.lift);
  }
}

int withWaste(int net, double waste) {
  return static_cast<int>(std::ceil(net * (1 + waste) - 1e-9));
}

double halfPacks(int units, int inPack) { return std::ceil(2.0 * units / inPack) / 2; }

// Whole packs for this lift, after what was left of those before.
class Packs {
 public:
  explicit Packs(int inPack) : inPack_(inPack) {}
  int bring(int units) {
    const int packs = units > left_ ? (units - left_ + inPack_ - 1) / inPack_ : 0;
    left_ += packs * inPack_ - units;
    return packs;
  }

 private:
  int inPack_, left_ = 0;
};

struct Counts {
  LaidCount bricks, blocks;
};

}  // namespace

std::vector<LiftLoad> deriveLoading(const Job& job, const SettingOut& settingOut,
                                    const Works& works, const Programme& programme) {
  std::map<StageKey, std::map<size_t, Counts>> lifts;
  std::map<StageKey, double> standing;
  for (const Element& e : works.elements) {
    if (e.unitCount == 0) continue;
    const auto wall = settingOut.wallNamed(e.wall);
    if (!wall) continue;
    const StageKey lift = liftOf(e.placed.stage);
    Counts& counts = lifts[lift][*wall];
    (e.material == Material::Brick ? counts.bricks : counts.blocks).add(works, e);
    const auto [at, isNew] = standing.emplace(lift, e.underside);
    if (!isNew) at->second = std::min(at->second, e.underside);
  }
  const LayingRates& rates = job.laying;
  Packs bricks(rates.bricksInPack), blocks(rates.blocksInPack);
  std::vector<LiftLoad> loads;
  for (const Stage& stage : programme.stages) {
    const auto lift = lifts.find(stage.key);
    if (lift == lifts.end()) continue;
    LiftLoad load{stage.key, nameOfLift(job, stage.key), standing[stage.key], {}, 0, 0, 0, 0};
    for (const auto& [wall, counts] : lift->second) {
      RunLoad run;
      run.wall = wall;
      const int special = counts.bricks.special;
      const WallBuildUp& w = job.walls;
      run.bricks = withWaste(
          neededFor(counts.bricks, w.brickLength, w.brickHeight).wholes + special, waste::kBricks);
      run.blocks =
          withWaste(neededFor(counts.blocks, w.blockLength, w.blockHeight).wholes, waste::kBlocks);
      run.brickPacks = halfPacks(run.bricks, rates.bricksInPack);
      run.blockPacks = halfPacks(run.blocks, rates.blocksInPack);
      load.bricks += run.bricks;
      load.blocks += run.blocks;
      load.runs.push_back(run);
    }
    load.brickPacks = bricks.bring(load.bricks);
    load.blockPacks = blocks.bring(load.blocks);
    loads.push_back(std::move(load));
  }
  return loads;
}

}  // namespace model
