#include "model/exchange/drawing_pdf.h"

#include <gtest/gtest.h>

#include "model/exchange/lettering.h"

namespace model {
namespace {

Drawing drawing() {
  Drawing made;
  made.title = "Setting-out of Дом";
  made.sheets.resize(2);
  made.sheets[0].line(Layer::Outlines, {kPen050, LineType::Chain}, {10, 10}, {110, 10});
  made.sheets[0].texts.push_back({Layer::Text, "corner C", {20, 20}});
  made.sheets[1].texts.push_back({Layer::Text, "東京 كوخ", {20, 20}});
  return made;
}

TEST(Pdf, IsTheSameBytesEveryTime) {
  const std::string once = pdfBytes(drawing());
  EXPECT_EQ(once.substr(0, 5), "%PDF-");
  EXPECT_EQ(once, pdfBytes(drawing()));
}

TEST(Pdf, TellsWhenItCannotBeSaved) {
  const auto problem = writePdf(drawing(), "no/such/folder/a.pdf");
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->file, "no/such/folder/a.pdf");
}

TEST(Lettering, IsAsWideAsItsSizeSays) {
  const TextWidth width = textWidth();
  EXPECT_GT(width("11240", 2.5, false), 6);
  EXPECT_LT(width("11240", 2.5, false), 13);
  EXPECT_NEAR(width("11240", 5, false), 2 * width("11240", 2.5, false), 1e-9);
  EXPECT_EQ(width("", 2.5, false), 0);
  EXPECT_GT(width("broken \xff byte", 2.5, false), 0);
}

// Figures line up in columns: each is as wide as any other.
TEST(Lettering, HasFiguresOfOneWidth) {
  const TextWidth width = textWidth();
  for (const char* figures : {"11111", "00000", "98765"})
    EXPECT_NEAR(width(figures, 2.5, false), width("88888", 2.5, false), 1e-6) << figures;
}

}  // namespace
}  // namespace model
