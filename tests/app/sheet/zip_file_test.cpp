#include "app/sheet/zip_file.h"

#include <gtest/gtest.h>

namespace {

using namespace blinkwright::app::sheet;

// The check value of CRC-32: "123456789" gives CBF43926 (in the catalogue of parametrised CRC algorithms,
// from memory).
TEST(ZipFiles, HaveTheSumOfTheirBytes) {
    EXPECT_EQ(crc32Of("123456789"), 0xcbf43926U);
    EXPECT_EQ(crc32Of(""), 0U);
}

} // namespace
