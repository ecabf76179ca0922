#include "model/bond/bond_pattern.h"

#include <array>

namespace model {

namespace {

constexpr int kNo = -1;

// Joints at `at` and every `period` after.
struct Repeated {
  int period;
  std::array<int, 4> at;  // under `period`, ascending; kNo: no more
};

Repeated repeatedJoints(BondKind bond, size_t course, bool through) {
  switch (bond) {
    case BondKind::Stack:
      return {4, {0, kNo, kNo, kNo}};
    case BondKind::Header:
      return through ? Repeated{2, {1, kNo, kNo, kNo}} : Repeated{2, {0, kNo, kNo, kNo}};
    case BondKind::English:
      return through ? Repeated{4, {0, kNo, kNo, kNo}} : Repeated{2, {1, kNo, kNo, kNo}};
    case BondKind::EnglishGardenWall:
      if (course % 4 == 0) return {2, {1, kNo, kNo, kNo}};
      break;
    case BondKind::Flemish:
      return through ? Repeated{6, {0, 4, kNo, kNo}} : Repeated{6, {1, 3, kNo, kNo}};
    case BondKind::FlemishGardenWall:
      // The header stands over the middle of three stretchers.
      return through ? Repeated{14, {0, 4, 6, 10}} : Repeated{14, {3, 7, 11, 13}};
    case BondKind::Stretcher:
      break;
  }
  return through ? Repeated{4, {0, kNo, kNo, kNo}} : Repeated{4, {2, kNo, kNo, kNo}};
}

}  // namespace

size_t coursesOf(BondKind bond) { return bond == BondKind::EnglishGardenWall ? 4 : 2; }

bool isHeaderCourse(BondKind bond, size_t course, bool through) {
  return bond == BondKind::Header || (bond == BondKind::English && !through) ||
         (bond == BondKind::EnglishGardenWall && course % 4 == 0);
}

bool hasHeaders(BondKind bond, size_t course) {
  if (bond == BondKind::Stretcher || bond == BondKind::Stack) return false;
  return bond != BondKind::EnglishGardenWall || course % 4 == 0;
}

std::vector<int> patternJoints(BondKind bond, size_t course, bool through, int upTo) {
  const Repeated repeated = repeatedJoints(bond, course, through);
  std::vector<int> joints;
  // The header at the corner, then a closer where the bond needs one; or a three-quarter.
  if (!through && upTo > kHeader) joints.push_back(kHeader);
  const int first = through ? kHeader : kHeader + 1;
  for (int base = 0; base < upTo; base += repeated.period)
    for (const int at : repeated.at)
      if (at != kNo && base + at >= first && base + at < upTo) joints.push_back(base + at);
  return joints;
}

}  // namespace model
