#include "model/bond/back_rows.h"

#include <algorithm>
#include <cmath>

namespace model {
namespace {

constexpr double kLeastPiece = 0.020;  // metres: mortar makes up less. Common practice, no source

class Rows {
 public:
  Rows(const BrickSizes& sizes, double backFrom, double backTo)
      : sizes_(sizes),
        backFrom_(backFrom),
        backTo_(backTo),
        count_(sizes.halfBricksThick()),
        row_((sizes.thickness - (count_ - 1) * sizes.joint) / count_) {}

  void add(const LaidPiece& face) {
    if (face.special) {  // mitred, and so through the whole leaf
      all_.push_back(face);
      return;
    }
    const bool endOn = face.header || face.closer;
    const bool clear = face.from > backFrom_ - 1e-6 && face.to < backTo_ + 1e-6;
    const int deep = endOn && clear ? 2 : 1;
    LaidPiece front = face;
    if (endOn && !clear) front.header = false;  // a half bat in the corner
    put(front, 0, deep);
    LaidPiece behind = face;
    behind.from = std::max(face.from, backFrom_);
    behind.to = std::min(face.to, backTo_);
    behind.header = behind.closer = false;
    if (behind.length() < kLeastPiece) return;
    int at = deep;
    for (; at + 2 <= count_; at += 2) putHeaders(behind, at);
    if (at < count_) putLast(behind, at, deep == 2);
  }

  std::vector<LaidPiece> take() { return std::move(all_); }

 private:
  double edge(int row) const { return row * (row_ + sizes_.joint); }

  void put(LaidPiece piece, int row, int deep) {
    piece.front = edge(row);
    piece.back = edge(row + deep) - sizes_.joint;
    all_.push_back(piece);
  }

  void putHeaders(const LaidPiece& behind, int row) {
    const double module = behind.length() + sizes_.joint;
    const int pieces = std::max(1, static_cast<int>(std::ceil(module / sizes_.half() - 0.1)));
    LaidPiece piece = behind;
    for (int i = 0; i < pieces; ++i) {
      piece.from = behind.from + i * module / pieces;
      piece.to = behind.from + (i + 1) * module / pieces - sizes_.joint;
      piece.header = std::fabs(piece.length() - sizes_.halfBrick()) < 0.003;
      piece.closer = piece.length() < (sizes_.halfBrick() + sizes_.closer()) / 2;
      put(piece, row, 2);
    }
  }

  // Two half bats behind headers beside one another are one brick.
  void putLast(const LaidPiece& behind, int row, bool behindHeader) {
    const bool one = behindHeader && batBehind_ < all_.size() &&
                     behind.from - all_[batBehind_].to < 2 * sizes_.joint &&
                     behind.to - all_[batBehind_].from < sizes_.brick + 0.003;
    if (one) {
      all_[batBehind_].to = behind.to;
      batBehind_ = all_.max_size();
      return;
    }
    put(behind, row, 1);
    batBehind_ = behindHeader ? all_.size() - 1 : all_.max_size();
  }

  const BrickSizes& sizes_;
  double backFrom_, backTo_;
  int count_;
  double row_;
  std::vector<LaidPiece> all_;
  size_t batBehind_ = all_.max_size();  // the last half bat at the back, while it has no other half
};

}  // namespace

void addBackRows(const BrickSizes& sizes, double backFrom, double backTo,
                 std::vector<LaidPiece>& laid) {
  Rows rows(sizes, backFrom, backTo);
  for (const LaidPiece& face : laid) rows.add(face);
  laid = rows.take();
}

}  // namespace model
