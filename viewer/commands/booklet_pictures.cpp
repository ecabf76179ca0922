#include "viewer/commands/booklet_pictures.h"

#include <algorithm>
#include <cmath>

#include "model/drawing/client_booklet.h"
#include "model/exchange/drawing_pdf.h"
#include "model/exchange/lettering.h"
#include "viewer/commands/clear_view.h"
#include "viewer/commands/stage_overlays.h"
#include "viewer/image_jpeg.h"

namespace viewer {
namespace {

// Pixels to a millimetre of paper: as sharp as a rendering needs, and thirty pages stay small.
constexpr double kCrewPixels = 8, kClientPixels = 7;
// Letters on the page of 1.6 mm and more.
constexpr float kLettering = 1.4F;

}  // namespace

std::optional<BookletFor> bookletNamed(const std::string& name) {
  if (name == "crew") return BookletFor::Crew;
  if (name == "client") return BookletFor::Client;
  return std::nullopt;
}

PictureOptions bookletPicture(const model::Model& model, size_t stage, BookletFor reader,
                              int widest) {
  const bool crew = reader == BookletFor::Crew;
  PictureOptions picture;
  const double pixels = crew ? kCrewPixels : kClientPixels;
  const double width = crew ? model::kBriefPictureWidth : model::kClientPictureWidth;
  const double height = crew ? model::kBriefPictureHeight : model::kClientPictureHeight;
  picture.width = std::min(widest, int(std::lround(width * pixels)));
  picture.height = std::max(1, int(std::lround(height * picture.width / width)));
  picture.time = static_cast<double>(stage) + 1;
  picture.view = clearView(model);
  if (crew) {
    picture.overlays = overlaysOf(model.programme.stages[stage].key);
    // What the sheet itself says.
    picture.overlays.captions = picture.overlays.titleBlock = picture.overlays.tape = false;
    picture.overlays.levels = picture.overlays.lines = false;
    picture.lettering = kLettering * static_cast<float>(picture.width / (width * pixels));
    picture.overlays.corners = true;
  }
  return picture;
}

std::optional<model::StagePictures> bookletPictures(const model::Model& model, Picturer& picturer,
                                                    BookletFor reader, std::optional<size_t> only,
                                                    const std::function<bool(size_t)>& goOn,
                                                    int widest) {
  model::StagePictures pictures(model.programme.stages.size());
  for (size_t i = 0; i < pictures.size(); ++i) {
    if (only && *only != i) continue;
    if (!goOn(i)) return std::nullopt;
    PictureOptions picture = bookletPicture(model, i, reader, widest);
    picture.own = picturer.viewOf(i);
    pictures[i] = jpegOf(picturer.picture(picture));
  }
  return pictures;
}

std::string bookletPdf(const model::Model& model, BookletFor reader,
                       const model::StagePictures& pictures, const model::BookletOptions& options) {
  const auto draw = reader == BookletFor::Crew ? model::drawCrewBrief : model::drawClientBooklet;
  return model::pdfBytes(draw(model, pictures, options, model::textWidth()));
}

}  // namespace viewer
