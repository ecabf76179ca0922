#include "viewer/panels/reading_card.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace viewer {
namespace {

RC_GTEST_PROP(ReadingCard, StaysInItsRoomAndNeverCoversWhatItReads, ()) {
  const Box room{40, 20, 40.0f + float(*rc::gen::inRange(500, 3800)),
                 20.0f + float(*rc::gen::inRange(300, 2100))};
  const glm::vec2 size{float(*rc::gen::inRange(60, 240)), float(*rc::gen::inRange(30, 100))};
  const glm::vec2 pointer{room.left + room.width() * float(*rc::gen::inRange(0, 101)) / 100,
                          room.top + room.height() * float(*rc::gen::inRange(0, 101)) / 100};
  const Box card = readingCardPlace(pointer, size, room, 18);
  RC_ASSERT(card.inside(room));
  RC_ASSERT(!card.grown(10).contains(pointer));
}

}  // namespace
}  // namespace viewer
