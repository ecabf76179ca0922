#include "model/job/unit_formats.h"

#include <array>
#include <cmath>

namespace model {

namespace {

constexpr double kInch = 0.0254;
constexpr double kJointOfUs = 3.0 / 8 * kInch;

// Millimetres, and so many courses in so much.
constexpr BrickFormatSizes metric(const char* name, double length, double width, double height,
                                  double joint, int courses, double rise, const char* source) {
  return {name,         length / 1000,         width / 1000, height / 1000,
          joint / 1000, rise / 1000 / courses, source};
}

// Inches.
constexpr BrickFormatSizes american(const char* name, double length, double height, int courses,
                                    double rise, const char* source) {
  return {name,       length * kInch,         3.625 * kInch, height * kInch,
          kJointOfUs, rise * kInch / courses, source};
}

// In the order of the enums.
constexpr std::array kBricks{
    metric("UK", 215, 102.5, 65, 10, 1, 75, "TIS-9"),
    metric("UK modular", 190, 90, 65, 10, 1, 75, "from memory"),
    american("US modular", 7.625, 2.25, 3, 8, "BIA-10, BIA-10B"),
    american("US standard", 8, 2.25, 3, 8, "from memory"),
    american("US engineer", 7.625, 2.8125, 5, 16, "BIA-10B for its courses; sizes from memory"),
    american("US closure", 7.625, 3.625, 1, 4, "BIA-10B for its courses; sizes from memory"),
    american("US norman", 11.625, 2.25, 3, 8, "from memory"),
    american("US roman", 11.625, 1.625, 2, 4, "BIA-10B for its courses; sizes from memory"),
    american("US utility", 11.625, 3.625, 1, 4, "BIA-10B for its courses; sizes from memory"),
    metric("NF", 240, 115, 71, 10, 3, 250, "from memory"),
    metric("DF", 240, 115, 52, 10, 4, 250, "from memory"),
    metric("2DF", 240, 115, 113, 10, 2, 250, "from memory"),
    metric("WF", 210, 100, 50, 10, 16, 1000, "from memory"),
    metric("WDF", 210, 100, 65, 10, 2, 155, "from memory"),
    metric("Danish", 228, 108, 54, 12, 3, 200, "from memory"),
    metric("Swedish", 250, 120, 62, 10, 1, 75, "from memory"),
    metric("Australian", 230, 110, 76, 10, 7, 600, "from memory"),
    metric("Indian modular", 190, 90, 90, 10, 1, 100, "from memory"),
};

constexpr BlockFormatSizes block(const char* name, double width, double length, double height,
                                 double joint, double course, const char* source) {
  return {name, length / 1000, width / 1000, height / 1000, joint / 1000, course / 1000, source};
}

constexpr BlockFormatSizes american(const char* name, double width) {
  return {name,       15.625 * kInch, width * kInch,   7.625 * kInch,
          kJointOfUs, 8 * kInch,      "NAVEDTRA-14045"};
}

constexpr std::array kBlocks{
    block("UK 100", 100, 440, 215, 10, 225, "TIS-9 for its course; sizes common practice"),
    block("UK 140", 140, 440, 215, 10, 225, "TIS-9 for its course; sizes common practice"),
    block("UK 215", 215, 440, 215, 10, 225, "TIS-9 for its course; sizes common practice"),
    american("US 4x8x16", 3.625),
    american("US 6x8x16", 5.625),
    american("US 8x8x16", 7.625),
    block("2DF", 115, 240, 113, 10, 125, "from memory"),
    block("3DF", 175, 240, 113, 10, 125, "from memory"),
    block("8DF", 240, 240, 238, 10, 250, "from memory"),
    block("10DF", 300, 240, 238, 10, 250, "from memory"),
    block("12DF", 365, 240, 238, 10, 250, "from memory"),
};

}  // namespace

const char* const kBrickFormatNames =
    "UK|UK modular|US modular|US standard|US engineer|US closure|US norman|US roman|US utility|NF|"
    "DF|2DF|WF|WDF|Danish|Swedish|Australian|Indian modular";
const char* const kBlockFormatNames =
    "UK 100|UK 140|UK 215|US 4x8x16|US 6x8x16|US 8x8x16|2DF|3DF|8DF|10DF|12DF";

const BrickFormatSizes& sizesOf(BrickFormat format) { return kBricks[static_cast<size_t>(format)]; }
const BlockFormatSizes& sizesOf(BlockFormat format) { return kBlocks[static_cast<size_t>(format)]; }

namespace {

// To the last digit where a course is just the unit and its joint.
double coursedHeight(double height, double joint, double course) {
  const double coursed = course - joint;
  return std::fabs(coursed - height) < 1e-9 ? height : coursed;
}

}  // namespace

void takeBrickSizes(WallBuildUp& walls, BrickFormat format) {
  const BrickFormatSizes& sizes = sizesOf(format);
  walls.bricks = format;
  walls.brickLength = sizes.length;
  walls.brickHeight = coursedHeight(sizes.height, sizes.joint, sizes.course);
  walls.outerLeaf = sizes.width;
  walls.joint = sizes.joint;
}

void takeBlockSizes(WallBuildUp& walls, BlockFormat format) {
  const BlockFormatSizes& sizes = sizesOf(format);
  walls.blocks = format;
  walls.blockLength = sizes.length;
  walls.blockHeight = coursedHeight(sizes.height, sizes.joint, sizes.course);
  walls.innerLeaf = sizes.width;
}

}  // namespace model
