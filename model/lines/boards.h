// Profile boards with the marks that are cut into them, and the offset lines that stand in for
// them.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/lines/face_list.h"
#include "model/settingout/setting_out.h"

namespace model {

// A saw cut or nail in the board's top edge, for one line.
struct BoardMark {
  std::string key, name;  // of the line, as SetOutFace
  double along = 0;       // from the board's stated end, metres
  Vec2 at{0, 0};
};

struct Board {
  std::string name;  // "A-B beyond A"
  size_t wall = 0;
  bool atEnd = false;  // beyond the wall's second corner
  std::string corner;  // the one it stands beyond
  double beyond = 0;   // from that corner, along the line
  // Marks are measured from `from`, the end outside the building, towards `to`.
  Vec2 from{0, 0}, to{0, 0};
  std::string measuredFrom;  // "right-hand end": seen from behind the board, facing the building
  double top = 0;            // level of the top edge, the same for every board
  // From the string down, at that corner of this wall; over a cellar to the head of its wall and to
  // its own formation.
  double downToConcrete = 0, downToFormation = 0;
  std::string opposite;          // the board that carries the other ends of its lines; "" for none
  std::vector<BoardMark> marks;  // from outside in
};

// Of a line that lacks a board: a string between two stakes beside the wall, and the distance from
// it to each of the wall's lines.
struct OffsetPair {
  struct Stake {
    std::string name;   // "A-B offset at A"
    double beyond = 0;  // the corner, along the line; negative: short of it
    Vec2 at{0, 0};
    double top = 0;  // level
  };
  struct ToFace {
    std::string key, name;
    double across = 0;  // from the string, square to it, towards the building's inside
  };
  size_t wall = 0;
  std::string why;     // a sentence without its full stop
  bool found = false;  // false: there is no room for stakes either, and the rest is empty
  double out = 0;      // of the string from the outer face; negative: inside the building
  std::array<Stake, 2> stakes;
  std::vector<ToFace> faces;
};

struct BoardPlan {
  std::vector<Board> boards;  // by wall, start before end
  std::vector<OffsetPair> offsets;
};

BoardPlan deriveBoards(const Job& job, const SettingOut& settingOut);

// "500 outside the outer face", "1000 inside the outer face".
std::string offsetWords(double out);

}  // namespace model
