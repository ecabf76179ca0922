// What a stage takes, and where it is to stand ready.
#include <algorithm>

#include "model/decimal_text.h"
#include "model/drawing/brief_facts.h"
#include "model/programme/date_words.h"

namespace model {

namespace {

std::string amountText(double amount, const std::string& unit) {
  return decimalText(amount, unit == nameOf(Unit::Each) ? 0 : 2);
}

// A part of another row: how what is ordered is cut.
bool isDetail(const TakeoffRow& row) {
  return row.basis.starts_with("of them") || row.item.find("lost in cutting") != std::string::npos;
}

// "1 1/2"; empty for none.
std::string packsText(double packs) {
  const int halves = int(packs * 2 + 0.5);
  if (halves == 0) return "";
  const std::string half = halves % 2 == 0 ? "" : "1/2", whole = std::to_string(halves / 2);
  return halves == 1 ? half : whole + (half.empty() ? "" : " " + half);
}

std::string numberText(int number) { return number == 0 ? "" : std::to_string(number); }

// A lift stands ready before its corners are raised.
bool laysLoad(const Stage& stage, const StageKey& load) {
  return std::any_of(stage.shares.begin(), stage.shares.end(), [&](const StageShare& share) {
    const bool corners = share.key.kind == StageKind::RaiseCorners &&
                         load.kind == StageKind::RunIn && share.key.storey == load.storey &&
                         share.key.lift == load.lift;
    return corners || share.key == load;
  });
}

}  // namespace

SheetTable BriefFacts::quantitiesTable(size_t stage) const {
  const std::string& name = model_.programme.stages[stage].name;
  SheetTable table;
  table.columns = {{"item", false}, {"net", true}, {"order", true}, {"unit", false}};
  for (const bool detail : {false, true})
    for (const TakeoffRow& row : model_.takeoff.byStage)
      if (row.stage == name && isDetail(row) == detail)
        table.rows.push_back({row.item, amountText(row.amount, row.unit),
                              amountText(row.order, row.unit), row.unit});
  return table;
}

SheetTable BriefFacts::loadingTable(size_t stage) const {
  SheetTable table;
  table.columns = {
      {"wall", false}, {"bricks", true}, {"packs", true}, {"blocks", true}, {"packs", true}};
  for (const LiftLoad& load : loads_) {
    if (!laysLoad(model_.programme.stages[stage], load.stage)) continue;
    for (const RunLoad& run : load.runs)
      table.rows.push_back({model_.settingOut.walls[run.wall].name, numberText(run.bricks),
                            packsText(run.brickPacks), numberText(run.blocks),
                            packsText(run.blockPacks)});
    table.rows.push_back({"bring", numberText(load.bricks), packsText(load.brickPacks),
                          numberText(load.blocks), packsText(load.blockPacks)});
  }
  return table;
}

SheetTable BriefFacts::deliveriesTable(size_t stage) const {
  SheetTable table;
  table.columns = {{"delivery", false}, {"on", false}};
  for (const DatedDelivery& each : model_.programme.deliveries)
    if (each.stage == stage) table.rows.push_back({each.what, dateWords(each.date)});
  return table;
}

}  // namespace model
