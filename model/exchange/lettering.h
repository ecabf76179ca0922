// The lettering of drawings: how wide a text is, and how it is drawn with Cairo. One typeface with
// figures that line up (B612); what it lacks comes from whatever typeface of the machine has it.
#pragma once

#include <memory>
#include <string>

#include "model/drawing/sheet.h"

typedef struct _cairo cairo_t;

namespace model {

class Lettering {
 public:
  Lettering();
  ~Lettering();
  Lettering(const Lettering&) = delete;
  Lettering& operator=(const Lettering&) = delete;

  // Millimetres for capitals of that many millimetres.
  double width(const std::string& text, double size, bool bold) const;
  // Into a context in millimetres with y up, as sheets have them.
  void draw(cairo_t* cairo, const Text& text) const;

 private:
  struct Parts;
  std::unique_ptr<Parts> parts_;
};

// Lettering::width as what composes sheets asks for it.
TextWidth textWidth();

}  // namespace model
