// The readings of one set as CSV, with every problem named at its place, and back.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "model/job/job.h"
#include "model/problems.h"

namespace model {

struct ReadingsResult {
  std::vector<Reading> rows;  // those without an error
  Problems problems;          // all of them, in file order
};

// The first row names the columns, in any order: kind, target, at, along mm, value, x mm, y mm,
// set-up, note, photo; those that no row uses may be left out.
//
//   kind      target           at       along  value                        x, y
//   level     of the schedule  (*)      (*)    level, metres                (*)
//   staff     of the schedule  (*)      (*)    staff reading, metres        (*)    with a set-up
//   face      a line           wall     mm     mm off it, outside positive
//   corner    a line           corner                                       mm
//   side      a line           wall            mm
//   diagonal  a line           corners         mm
//
// (*) a corner; a wall, and how far along it; an opening; "pin 3"; or any name with x and y. Walls
// are named either way round: along runs from the corner named first. `job` must be free of errors.
// `file` is only used in messages. Never throws or crashes, whatever the bytes; refuses texts over
// 1 MiB and sets over 5,000 rows.
ReadingsResult readReadings(std::string_view text, const std::string& file, const Job& job);

// CSV (RFC 4180) that readReadings gives back the same, places aside; the few doubles that no
// number of millimetres gives come back to the last bit but one. Columns that no reading uses are
// left out.
std::string writeReadings(const std::vector<Reading>& rows);

// What a file of readings holds, as Markdown; the last part of keyReference().
std::string readingsReference();

}  // namespace model
