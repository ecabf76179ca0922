#include "model/exchange/loading_table.h"

#include <cstdio>

#include "model/takeoff/loading.h"

namespace model {
namespace {

// "1 1/2"; empty for none.
std::string packsText(double packs) {
  const int halves = static_cast<int>(packs * 2 + 0.5);
  if (halves == 0) return "";
  if (halves == 1) return "1/2";
  return std::to_string(halves / 2) + (halves % 2 ? " 1/2" : "");
}

std::string numberText(int number) { return number == 0 ? "" : std::to_string(number); }

}  // namespace

TablePart loadingPart(const Model& model) {
  TablePart part;
  part.key = "loading";
  Table& table = part.table;
  table.title = "Bricks and blocks to load out, lift by lift, " + model.job.name;
  table.columns = {"lift",   "laid from m",    "wall", "bricks", "packs of bricks",
                   "blocks", "packs of blocks"};
  table.numeric = {false, true, false, true, false, true, false};
  const auto& walls = model.settingOut.walls;
  for (const LiftLoad& lift :
       deriveLoading(model.job, model.settingOut, model.works, model.programme)) {
    const std::string from = levelText(lift.standing);
    for (const RunLoad& run : lift.runs)
      table.rows.push_back({lift.name, from, walls[run.wall].name, numberText(run.bricks),
                            packsText(run.brickPacks), numberText(run.blocks),
                            packsText(run.blockPacks)});
    table.rows.push_back({lift.name, from, "bring", numberText(lift.bricks),
                          packsText(lift.brickPacks), numberText(lift.blocks),
                          packsText(lift.blockPacks)});
  }
  const LayingRates& rates = model.job.laying;
  part.words = {
      "Packs of " + std::to_string(rates.bricksInPack) + " bricks and " +
          std::to_string(rates.blocksInPack) +
          " blocks; waste and what cuts are made from are in them. To set down at each run in "
          "half packs; to bring for each lift in whole ones, what is left over of the lift before "
          "used first",
      kLoadingCaution};
  return part;
}

}  // namespace model
