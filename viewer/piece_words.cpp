#include "viewer/piece_words.h"

#include "viewer/unit_words.h"

namespace viewer {

namespace {

std::string wordsOf(const model::Model& model, const Scene& scene, const PieceEvent& event) {
  if (event.kind == PieceEvent::Kind::UnitLaid) {
    const std::uint32_t element = scene.units[event.index].what & ((1u << kElementBits) - 1);
    return unitWords(model, element, scene.modelUnits[event.index]);
  }
  const std::string& name = model.works.elements[event.index].name;
  return event.kind == PieceEvent::Kind::ThingGone ? "Taken away: " + name : name;
}

}  // namespace

std::optional<PieceEvent> newestPiece(const PieceTimes& pieces, double time) {
  const auto moment = pieces.momentAt(time);
  if (!moment || pieces.eventCount(*moment) == 0) return std::nullopt;
  return pieces.event(*moment, 0);
}

std::string pieceWords(const model::Model& model, const Scene& scene, const PieceTimes& pieces,
                       double time) {
  const auto moment = pieces.momentAt(time);
  if (!moment || pieces.eventCount(*moment) == 0) return {};
  const size_t more = pieces.eventCount(*moment) - 1;
  const std::string words = wordsOf(model, scene, pieces.event(*moment, 0));
  return more == 0 ? words : words + ", and " + std::to_string(more) + " more";
}

std::string pieceCountWords(const PieceTimes& pieces, double time) {
  return "piece " + std::to_string(pieces.countAt(time)) + " of " + std::to_string(pieces.count());
}

}  // namespace viewer
