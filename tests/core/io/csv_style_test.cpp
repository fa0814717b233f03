// Tables in the two usual styles of CSV.
#include "core/io/csv_style.h"

#include <gtest/gtest.h>

namespace blinkwright::io {
namespace {

TEST(CsvStyle, NumbersGetADecimalCommaAndSemicolonsBetweenThem) {
    EXPECT_EQ(inStyle("time [s],output [V]\r\n0.5,-4.25\r\n1e-05,3\r\n,1.5e-7\r\n", commaCsv),
              "time [s];output [V]\r\n0,5;-4,25\r\n1e-05;3\r\n;1,5e-7\r\n");
}

TEST(CsvStyle, TextsStayAsTheyAre) {
    EXPECT_EQ(inStyle("R1.resistance,\"4,7 k\",2.5.2026,v1.0,\"0.5\"", commaCsv),
              "R1.resistance;4,7 k;2.5.2026;v1.0;0.5");
    EXPECT_EQ(inStyle("a;b,\"c,;d\",\"say \"\"x\"\"\",\"two\nlines\"\n\"\",1.5\n", commaCsv),
              "\"a;b\";\"c,;d\";\"say \"\"x\"\"\";\"two\nlines\"\n;1,5\n");
}

TEST(CsvStyle, TabsSuitAnySignAndThePointChangesNothing) {
    EXPECT_EQ(inStyle("a,0.5\r\n", {'\t', ','}), "a\t0,5\r\n");
    EXPECT_EQ(inStyle("\"a,b\",0.5\r\n", {'\t', '.'}), "a,b\t0.5\r\n");
    EXPECT_EQ(inStyle("\"a\",0.5\r\n", pointCsv), "\"a\",0.5\r\n");
}

} // namespace
} // namespace blinkwright::io
