#include "model/exchange/drawing_pdf.h"

#include <cairo-pdf.h>

#include <memory>
#include <stdexcept>

#include "model/exchange/lettering.h"
#include "model/job/write_job.h"

namespace model {
namespace {

constexpr double kPoint = 72 / 25.4;  // points to a millimetre

cairo_status_t append(void* bytes, const unsigned char* data, unsigned length) {
  static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
  return CAIRO_STATUS_SUCCESS;
}

void check(cairo_status_t status) {
  if (status != CAIRO_STATUS_SUCCESS)
    throw std::runtime_error(std::string("the PDF cannot be made: ") +
                             cairo_status_to_string(status));
}

// A text leaves its point behind, and no page takes it away: every path begins anew.
void path(cairo_t* cairo, const std::vector<Vec2>& points, bool closed) {
  cairo_new_path(cairo);
  for (const Vec2& p : points) cairo_line_to(cairo, p.x, p.y);
  if (closed) cairo_close_path(cairo);
}

void inkLine(cairo_t* cairo, const Pen& pen) {
  const std::vector<double> dashes = dashesOf(pen);
  cairo_set_dash(cairo, dashes.data(), int(dashes.size()), 0);
  cairo_set_line_width(cairo, pen.width);
  cairo_set_source_rgb(cairo, 0, 0, 0);
  cairo_stroke(cairo);
}

using Surface = std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)>;

// Cairo puts the JPEG itself into the file; the surface it hangs on stays blank.
void drawPicture(cairo_t* cairo, const Picture& picture) {
  const Jpeg& jpeg = picture.jpeg;
  if (jpeg.width <= 0 || jpeg.height <= 0) return;
  const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, jpeg.width, jpeg.height),
                        cairo_surface_destroy);
  check(cairo_surface_status(surface.get()));
  // The file outlives the call, as the drawing does.
  check(cairo_surface_set_mime_data(
      surface.get(), CAIRO_MIME_TYPE_JPEG,
      reinterpret_cast<const unsigned char*>(jpeg.bytes.data()), jpeg.bytes.size(), [](void*) {},
      const_cast<char*>(jpeg.bytes.data())));
  cairo_save(cairo);
  cairo_translate(cairo, picture.area.low.x, picture.area.high.y);
  cairo_scale(cairo, picture.area.width() / jpeg.width, -picture.area.height() / jpeg.height);
  cairo_set_source_surface(cairo, surface.get(), 0, 0);
  cairo_paint(cairo);
  cairo_restore(cairo);
}

void drawSheet(cairo_t* cairo, const Sheet& sheet, const Lettering& lettering) {
  cairo_save(cairo);
  cairo_scale(cairo, kPoint, -kPoint);
  cairo_translate(cairo, 0, -sheet.height);
  cairo_set_line_join(cairo, CAIRO_LINE_JOIN_MITER);
  cairo_set_line_cap(cairo, CAIRO_LINE_CAP_BUTT);
  for (const Picture& picture : sheet.pictures) drawPicture(cairo, picture);
  for (const Fill& fill : sheet.fills) {
    path(cairo, fill.outline, true);
    cairo_set_source_rgb(cairo, fill.grey, fill.grey, fill.grey);
    cairo_fill(cairo);
  }
  for (const Stroke& stroke : sheet.strokes) {
    path(cairo, stroke.points, stroke.closed);
    inkLine(cairo, stroke.pen);
  }
  for (const Circle& circle : sheet.circles) {
    cairo_new_path(cairo);
    cairo_arc(cairo, circle.centre.x, circle.centre.y, circle.radius, 0,
              2 * 3.14159265358979323846);
    cairo_close_path(cairo);
    if (circle.cleared) {
      cairo_set_source_rgb(cairo, 1, 1, 1);
      cairo_fill_preserve(cairo);
    }
    inkLine(cairo, circle.pen);
  }
  for (const Text& text : sheet.texts) lettering.draw(cairo, text);
  cairo_restore(cairo);
}

}  // namespace

std::string pdfBytes(const Drawing& drawing) {
  std::string bytes;
  const Sheet blank;
  const Sheet& first = drawing.sheets.empty() ? blank : drawing.sheets.front();
  const Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, first.width * kPoint,
                                                            first.height * kPoint),
                        cairo_surface_destroy);
  cairo_pdf_surface_restrict_to_version(surface.get(), CAIRO_PDF_VERSION_1_5);
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, drawing.title.c_str());
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATOR,
                                 "Stringcourse " STRINGCOURSE_VERSION);
  // Cairo would write the time of day; the same drawing must give the same bytes.
  cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE,
                                 "2000-01-01T00:00:00Z");
  const Lettering lettering;
  {
    const std::unique_ptr<cairo_t, decltype(&cairo_destroy)> cairo(cairo_create(surface.get()),
                                                                   cairo_destroy);
    for (const Sheet& sheet : drawing.sheets) {
      cairo_pdf_surface_set_size(surface.get(), sheet.width * kPoint, sheet.height * kPoint);
      drawSheet(cairo.get(), sheet, lettering);
      cairo_show_page(cairo.get());
    }
    check(cairo_status(cairo.get()));
  }
  cairo_surface_finish(surface.get());
  check(cairo_surface_status(surface.get()));
  return bytes;
}

std::optional<Problem> writePdf(const Drawing& drawing, const std::string& path) {
  return saveAtomically(path, pdfBytes(drawing));
}

}  // namespace model
