// Playing by stage, by day or by piece, and stepping by piece.
#include <utility>

#include "viewer/app_session.h"
#include "viewer/day_beats.h"
#include "viewer/piece_words.h"

namespace viewer {

const PieceTimes& Session::pieces() {
  if (!pieces_) pieces_ = std::make_shared<const PieceTimes>(job_->scene);
  return *pieces_;
}

void Session::playBy(Pace pace) {
  if (!job_) return;
  if (pace == Pace::Day && !playback_.hasBeats(pace))
    playback_.setBeats(pace, std::make_shared<const Beats>(dayBeats(job_->model.programme)));
  if (pace == Pace::Piece && !playback_.hasBeats(pace)) {
    const Beats& beats = pieces().beats();
    playback_.setBeats(pace, std::shared_ptr<const Beats>(pieces_, &beats));
  }
  playback_.setPace(pace);
}

bool Session::stepPiece(bool on) {
  const Beats& beats = pieces().beats();
  const double time = playback_.time();
  const auto to = on ? beats.nextEnd(time) : beats.endBefore(time);
  // Before the first there is nothing yet.
  playback_.goTo(to.value_or(on ? time : 0.0));
  steppedTo_ = playback_.time();
  return true;
}

void Session::markNewest(Frame& frame) const {
  const bool looksAtPieces = playback_.pace() == Pace::Piece || steppedTo_ == playback_.time();
  if (!pieces_ || !looksAtPieces || presenting_.on()) return;
  const auto newest = newestPiece(*pieces_, playback_.time());
  if (!newest) return;
  if (newest->kind == PieceEvent::Kind::UnitLaid) frame.newestUnit = newest->index;
  if (newest->kind == PieceEvent::Kind::ThingMade) frame.newest = newest->index;
}

void Session::giveWords(OverlayOptions& options) const {
  options.pace = playback_.pace();
  options.waits = playback_.waits();
  const bool looksAtPieces = playback_.pace() == Pace::Piece || steppedTo_ == playback_.time();
  if (!pieces_ || !looksAtPieces) return;
  options.piece = pieceWords(job_->model, job_->scene, *pieces_, playback_.time());
  options.pieceCount = pieceCountWords(*pieces_, playback_.time());
}

}  // namespace viewer
