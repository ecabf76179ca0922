#include "model/exchange/lettering.h"

#include <pango/pangocairo.h>

#include <map>
#include <tuple>

namespace model {

namespace {

constexpr const char* kFamily = "B612, Noto Sans, sans-serif";
// Marks such as a dot and a triangle are of one size only when they are from one typeface.
constexpr const char* kMarkFamily = "Noto Sans Symbols2";
constexpr double kEm = 100;  // size that layouts are made at; they are scaled to what is asked

struct Free {
  void operator()(void* object) const { g_object_unref(object); }
};

// Texts of jobs are UTF-8 already; this is for those made in code.
std::string validText(const std::string& text) {
  char* valid = g_utf8_make_valid(text.data(), gssize(text.size()));
  std::string result = valid;
  g_free(valid);
  return result;
}

// Gives the characters of the block Geometric Shapes (U+25A0 to U+25FF) their own typeface.
void letterMarks(PangoLayout* layout, const std::string& text) {
  PangoAttrList* list = nullptr;
  for (size_t i = 0; i + 2 < text.size(); ++i) {
    const auto byte = [&](size_t k) { return static_cast<unsigned char>(text[i + k]); };
    if (byte(0) != 0xe2 || !((byte(1) == 0x96 && byte(2) >= 0xa0) || byte(1) == 0x97)) continue;
    if (!list) list = pango_attr_list_new();
    PangoAttribute* family = pango_attr_family_new(kMarkFamily);
    family->start_index = guint(i);
    family->end_index = guint(i + 3);
    pango_attr_list_insert(list, family);
  }
  if (!list) return;
  pango_layout_set_attributes(layout, list);
  pango_attr_list_unref(list);
}

}  // namespace

struct Lettering::Parts {
  std::unique_ptr<PangoFontMap, Free> map{pango_cairo_font_map_new()};
  std::unique_ptr<PangoContext, Free> context{pango_font_map_create_context(map.get())};
  double capitals = 0.7;  // their height in ems
  std::map<std::pair<std::string, bool>, double> widths;

  std::unique_ptr<PangoLayout, Free> layout(const std::string& text, bool bold) const {
    std::unique_ptr<PangoLayout, Free> made(pango_layout_new(context.get()));
    PangoFontDescription* font = pango_font_description_from_string(kFamily);
    pango_font_description_set_absolute_size(font, kEm * PANGO_SCALE);
    if (bold) pango_font_description_set_weight(font, PANGO_WEIGHT_BOLD);
    pango_layout_set_font_description(made.get(), font);
    pango_font_description_free(font);
    pango_layout_set_single_paragraph_mode(made.get(), TRUE);
    const std::string valid = validText(text);
    pango_layout_set_text(made.get(), valid.c_str(), int(valid.size()));
    letterMarks(made.get(), valid);
    return made;
  }
};

Lettering::Lettering() : parts_(std::make_unique<Parts>()) {
  // True widths at any size: nothing is rounded to the pixels of a screen.
  pango_context_set_round_glyph_positions(parts_->context.get(), FALSE);
  cairo_font_options_t* options = cairo_font_options_create();
  cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options(parts_->context.get(), options);
  cairo_font_options_destroy(options);
  PangoRectangle ink;
  pango_layout_get_extents(parts_->layout("H", false).get(), &ink, nullptr);
  if (ink.height > 0) parts_->capitals = double(ink.height) / PANGO_SCALE / kEm;
}

Lettering::~Lettering() = default;

double Lettering::width(const std::string& text, double size, bool bold) const {
  const auto [at, isNew] = parts_->widths.try_emplace({text, bold}, 0);
  if (isNew) {
    PangoRectangle logical;
    pango_layout_get_extents(parts_->layout(text, bold).get(), nullptr, &logical);
    at->second = double(logical.width) / PANGO_SCALE / kEm;
  }
  return at->second * size / parts_->capitals;
}

void Lettering::draw(cairo_t* cairo, const Text& text) const {
  const auto layout = parts_->layout(text.text, text.bold);
  const Vec2 start = startOf(text, width(text.text, text.size, text.bold));
  cairo_save(cairo);
  cairo_translate(cairo, text.at.x, text.at.y);
  cairo_rotate(cairo, text.angle * 3.14159265358979323846 / 180);
  cairo_translate(cairo, start.x, start.y);
  const double scale = text.size / parts_->capitals / kEm;
  cairo_scale(cairo, scale, -scale);
  PangoLayoutLine* line = pango_layout_get_line_readonly(layout.get(), 0);
  if (text.halo) {
    cairo_move_to(cairo, 0, 0);
    pango_cairo_layout_line_path(cairo, line);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    cairo_set_line_width(cairo, 1.0 / scale);
    cairo_set_dash(cairo, nullptr, 0, 0);
    cairo_stroke(cairo);
  }
  cairo_set_source_rgb(cairo, 0, 0, 0);
  cairo_move_to(cairo, 0, 0);
  pango_cairo_show_layout_line(cairo, line);
  cairo_restore(cairo);
}

TextWidth textWidth() {
  auto lettering = std::make_shared<Lettering>();
  return [lettering](const std::string& text, double size, bool bold) {
    return lettering->width(text, size, bold);
  };
}

}  // namespace model
