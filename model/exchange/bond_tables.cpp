#include "model/exchange/bond_tables.h"

#include <cmath>
#include <cstdio>
#include <map>

#include "model/bond/bond_count.h"
#include "model/bond/bond_moves.h"
#include "model/exchange/cellar_bond_table.h"
#include "model/job/unit_formats.h"
#include "model/takeoff/unit_rates.h"
#include "model/walls/leaf_plan.h"

namespace model {
namespace {

// Tenths of a millimetre matter to a joint.
std::string tenths(double metres) {
  const double mm = std::round(metres * 1e4) / 10;
  char text[32];
  std::snprintf(text, sizeof text, "%.1f", mm == 0 ? 0.0 : mm);
  return text;
}

// 911.25 and 910: half millimetres and less are the drawing's own, so no rounding to whole ones.
std::string millimetres(double metres) {
  const std::string text = tenths(metres);
  return text.ends_with(".0") ? text.substr(0, text.size() - 2) : text;
}

std::string signedMillimetres(double metres) {
  const std::string text = millimetres(metres);
  return text == "0" || text[0] == '-' ? text : "+" + text;
}

// "11 1/2": bricks with their joints.
std::string bricksText(int halfBricks) {
  const std::string whole = std::to_string(halfBricks / 2);
  if (halfBricks % 2 == 0) return whole;
  return halfBricks == 1 ? "1/2" : whole + " 1/2";
}

std::string cutsText(const StretchFit& fit) {
  if (fit.pattern && fit.cuts[0].empty() && fit.cuts[1].empty())
    return "none: stretchers and headers out of turn";
  std::string text;
  for (const std::vector<double>& cuts : fit.cuts) {
    if (cuts.empty()) continue;
    text += text.empty() ? "" : ", then ";
    if (cuts.size() > 1) text += std::to_string(cuts.size()) + " of ";
    text += lengthText(cuts.front());
  }
  return text;
}

std::string comesOutText(const BrickSizes& sizes, const DryStretch& stretch) {
  const StretchFit& fit = stretch.fit;
  if (stretch.movement) return "ends on both sides";
  if (fit.regular) return "comes out";
  const bool plain = sizes.bond == BondKind::Stretcher;
  if (plain && fit.joints[0].empty() && fit.joints[1].empty()) return "too narrow for a bond";
  std::string text = fit.pattern ? "bond broken where it meets from both ends" : "bond broken";
  if (fit.lap < sizes.leastLap() && sizes.bond != BondKind::Stack)
    text += ", lap only " + lengthText(fit.lap);
  if (fit.shortCut) text += ", pieces too short";
  return text;
}

// From brick to brick, as it is taped: the joints at its stations are not brickwork.
double faceLength(const BrickSizes& sizes, const DryStretch& stretch) {
  const bool between = stretch.opening || stretch.movement;
  return stretch.to - stretch.from + (between ? sizes.joint : -sizes.joint);
}

// A width in whole half bricks with their joints is what the opening is called; its brickwork is
// built a joint wider. Source: TIS-9.
void tellCoordinatingWidths(const Model& model, const DryBond& bond, TablePart& part) {
  for (const WallBond& wall : bond.walls) {
    for (const DryStretch& stretch : wall.stretches) {
      if (!stretch.opening) continue;
      const double width = faceLength(bond.sizes, stretch);
      const double halves = std::round(width / bond.sizes.half());
      if (std::fabs(width - halves * bond.sizes.half()) > 0.001) continue;
      part.words.push_back(openingLabel(model.settingOut, *stretch.opening) + " is " +
                           millimetres(width) + " wide, which is " +
                           bricksText(static_cast<int>(halves)) +
                           " bricks with as many joints: an opening called so is built a joint "
                           "wider, " +
                           millimetres(width + bond.sizes.joint));
    }
  }
}

// What the kind of bond asks of the designer, not of the bricklayer.
void tellKind(const BrickSizes& sizes, TablePart& part) {
  if (sizes.bond == BondKind::Stack)
    part.words.push_back(
        "In a stack the joints stand over one another and nothing laps: ask the designer how it is "
        "reinforced and tied");
  if (sizes.halfBricksThick() >= 2 && sizes.bond == BondKind::Stretcher)
    part.words.push_back(
        "In stretcher bond nothing ties the rows of a leaf this thick together: lay it in English "
        "or Flemish bond, or ask the designer how they are tied");
}

TablePart stretchesPart(const Model& model, const DryBond& bond) {
  TablePart part;
  part.key = "stretches";
  Table& table = part.table;
  table.title = "The bond of the outer leaf laid dry, " + model.job.name;
  table.columns = {"wall",   "from",    "to",       "what", "length mm",
                   "bricks", "over mm", "joint mm", "bond", "cut to mm"};
  table.numeric = {false, false, false, false, true, false, true, true, false, false};
  for (const WallBond& wall : bond.walls) {
    for (const DryStretch& stretch : wall.stretches) {
      const StretchFit& fit = stretch.fit;
      const BrickSize nearest = nearestBrickSize(bond.sizes, stretch.to - stretch.from);
      table.rows.push_back({model.settingOut.walls[wall.wall].name, stretch.first, stretch.last,
                            stretch.movement  ? "movement joint"
                            : stretch.opening ? "under and over"
                                              : "pier",
                            millimetres(faceLength(bond.sizes, stretch)),
                            stretch.movement ? "" : bricksText(nearest.halfBricks),
                            stretch.movement ? "" : signedMillimetres(nearest.over),
                            tenths(fit.joint), comesOutText(bond.sizes, stretch), cutsText(fit)});
    }
  }
  tellKind(bond.sizes, part);
  tellCoordinatingWidths(model, bond, part);
  for (const auto& [wall, stretch] : bond.brokenToClose) {
    const DryStretch& broken = bond.walls[wall].stretches[stretch];
    part.words.push_back(
        "The courses would not meet in order all round: the bond is broken once, in "
        "wall " +
        model.settingOut.walls[wall].name + " between " + broken.first + " and " + broken.last);
  }
  for (const WallBond& wall : bond.walls) {
    for (const OffBond& off : wall.offBond) {
      if (std::fabs(off.atStart) < 0.003 && std::fabs(off.atEnd) < 0.003) continue;
      part.words.push_back(openingLabel(model.settingOut, off.opening) + " in wall " +
                           model.settingOut.walls[wall.wall].name +
                           " is not over the joints below: its jambs would be by " +
                           signedMillimetres(off.atStart) + " and " + signedMillimetres(off.atEnd) +
                           " along the wall");
    }
  }
  return part;
}

TablePart bricksPart(const Model& model, const DryBond& bond) {
  TablePart part;
  part.key = "bricks";
  Table& table = part.table;
  table.title = "Bricks of the outer leaf up to the eaves, counted, " + model.job.name;
  table.columns = {"wall", "piece", "length mm", "number"};
  table.numeric = {false, false, true, true};
  const auto rows = [&](const std::string& wall, const BondCount& count) {
    const auto row = [&](const std::string& piece, double length, int number) {
      if (number > 0)
        table.rows.push_back(
            {wall, piece, length > 0 ? millimetres(length) : "", std::to_string(number)});
    };
    row("whole", bond.sizes.brick, count.whole);
    row("half", bond.sizes.halfBrick(), count.half);
    row("closer", bond.sizes.closer(), count.closer);
    for (const auto& [length, number] : count.cut) row("cut", length / 1000.0, number);
    for (const auto& [degrees, number] : count.special)
      row("angle brick, " + std::to_string(degrees) + " degrees", 0, number);
  };
  BondCount all;
  const std::vector<BondCount> counts = countBond(model.job, model.settingOut, bond);
  for (size_t wall = 0; wall < counts.size(); ++wall) {
    const BondCount& count = counts[wall];
    rows(model.settingOut.walls[wall].name, count);
    all.whole += count.whole;
    all.half += count.half;
    all.closer += count.closer;
    for (const auto& [degrees, number] : count.special) all.special[degrees] += number;
    for (const auto& [length, number] : count.cut) all.cut[length] += number;
  }
  rows("all", all);
  part.words.push_back("Bricks of gables above the eaves, cut to the rake, are not among them");
  return part;
}

// What the units are, and how many of them and their joints make a square metre of face.
TablePart unitsPart(const Model& model) {
  TablePart part;
  part.key = "units";
  Table& table = part.table;
  table.title = "Bricks and blocks, " + model.job.name;
  table.columns = {"units", "called", "size mm", "joint mm", "course mm", "to a m2", "source"};
  table.numeric = {false, false, false, true, true, true, false};
  const WallBuildUp& walls = model.job.walls;
  const auto row = [&](const char* units, const char* name, const char* source, bool own,
                       double length, double width, double height, double course) {
    char rate[32];
    std::snprintf(rate, sizeof rate, "%.2f",
                  unitsPerSquareMetre(length, course - walls.joint, walls.joint));
    table.rows.push_back(
        {units, own ? "own size" : name,
         millimetres(length) + " x " + millimetres(width) + " x " + millimetres(height),
         tenths(walls.joint), tenths(course), rate, own ? "the job" : source});
  };
  WallBuildUp named = walls;
  takeBlockSizes(named, walls.blocks);
  takeBrickSizes(named, walls.bricks);
  // A named unit as it is; its course is made up in the bed.
  const BrickFormatSizes& brick = sizesOf(walls.bricks);
  const bool ownBricks = named.brickLength != walls.brickLength ||
                         named.brickHeight != walls.brickHeight || named.joint != walls.joint ||
                         named.outerLeaf != walls.outerLeaf;
  row("bricks", brick.name, brick.source, ownBricks, walls.brickLength, walls.outerLeaf,
      ownBricks ? walls.brickHeight : brick.height, walls.course());
  const BlockFormatSizes& block = sizesOf(walls.blocks);
  const bool ownBlocks = named.blockLength != walls.blockLength ||
                         named.blockHeight != walls.blockHeight ||
                         named.innerLeaf != walls.innerLeaf;
  row("blocks", block.name, block.source, ownBlocks, walls.blockLength, walls.innerLeaf,
      ownBlocks ? walls.blockHeight : block.height, walls.blockHeight + walls.joint);
  return part;
}

TablePart movesPart(const Model& model, const DryBond& bond) {
  TablePart part;
  part.key = "moves";
  Table& table = part.table;
  table.title = "What would come out in whole and half bricks, " + model.job.name;
  table.columns = {"wall", "what", "move mm", "towards", "wider mm", "or the other way mm"};
  table.numeric = {false, false, true, false, true, true};
  const SettingOut& out = model.settingOut;
  for (const WallMoves& moves : brickSizeMoves(bond)) {
    const WallLine& line = out.walls[moves.wall];
    for (const OpeningMove& move : moves.openings) {
      const size_t end = move.shift < 0 ? line.from : line.to;
      table.rows.push_back({line.name, openingLabel(out, move.opening),
                            millimetres(std::fabs(move.shift)),
                            move.shift == 0 ? "" : "corner " + out.corners[end].letter,
                            signedMillimetres(move.wider),
                            move.shift == 0 ? "" : millimetres(std::fabs(move.otherShift))});
    }
    if (moves.longer != 0)
      table.rows.push_back({line.name, "the wall itself", "", "", signedMillimetres(moves.longer),
                            signedMillimetres(moves.otherLonger)});
  }
  if (table.rows.empty())
    part.words.push_back("Every wall comes out in brick sizes as drawn");
  else
    part.words.push_back("The drawing decides: ask the designer before anything moves");
  return part;
}

}  // namespace

std::vector<TablePart> bondParts(const Model& model, const DryBond& bond) {
  std::vector<TablePart> parts{stretchesPart(model, bond), bricksPart(model, bond),
                               movesPart(model, bond), unitsPart(model)};
  if (const auto cellar = cellarBondPart(model)) parts.push_back(*cellar);
  return parts;
}

}  // namespace model
