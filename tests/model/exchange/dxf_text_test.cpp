#include "model/exchange/dxf_text.h"

#include <gtest/gtest.h>

#include "model/exchange/drawing_dxf.h"

namespace model {
namespace {

TEST(DxfText, IsAsciiOnOneLine) {
  EXPECT_EQ(dxfText("corner C"), "corner C");
  EXPECT_EQ(dxfText("Ж 東 \U0001F600"), "\\U+0416 \\U+6771 \\U+FFFD");
  EXPECT_EQ(dxfText("a\nb\tc"), "a b c");
  EXPECT_EQ(dxfText("\xff\xc3"), "\\U+FFFD\\U+FFFD");
}

// Two per cent signs begin a code: %%d is a degree sign.
TEST(DxfText, LeavesNoCodesInWords) {
  EXPECT_EQ(dxfText("5 % fall"), "5 % fall");
  EXPECT_EQ(dxfText("%%d"), "% %d");
  EXPECT_EQ(dxfText("%%%"), "% % %");
  EXPECT_EQ(dxfText("^J"), "^ J");
}

TEST(Dxf, HasPointsOfThePlanWhereTheJobHasThem) {
  Drawing drawing;
  drawing.sheets.resize(1);
  Sheet& sheet = drawing.sheets[0];
  sheet.view = View{50, {123.4, 56.7}};
  sheet.line(Layer::Outlines, {}, sheet.view->onPaper({1.2345, 0}), sheet.view->onPaper({0, -2.5}));
  const std::string dxf = dxfBytes(drawing);
  EXPECT_NE(dxf.find("0\nLINE\n8\nOUTLINE\n6\nCONTINUOUS\n10\n1234.500000\n20\n0.000000\n"),
            std::string::npos);
  EXPECT_NE(dxf.find("11\n0.000000\n21\n-2500.000000\n"), std::string::npos);
  EXPECT_EQ(dxf.substr(dxf.size() - 6), "0\nEOF\n");
}

TEST(Dxf, TellsWhenItCannotBeSaved) { EXPECT_TRUE(writeDxf({}, "no/such/folder/a.dxf")); }

}  // namespace
}  // namespace model
