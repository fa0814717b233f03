# Writes one C++ source that holds the texts of the device sheets, by file name without its ending.
# -DOUT=file.cpp -DSHEETS=a.json;b.json
set(text "// Made from resources/devices; do not edit.\n#include \"core/devices/sheet_texts.h\"\n\nnamespace blinkwright::devices {\n\nstd::span<const SheetText> sheetTexts() {\n    static constexpr SheetText texts[] = {\n")
foreach(sheet IN LISTS SHEETS)
  get_filename_component(name ${sheet} NAME_WE)
  file(READ ${sheet} content)
  string(APPEND text "        {\"${name}\", R\"SHEET(${content})SHEET\"},\n")
endforeach()
string(APPEND text "    };\n    return texts;\n}\n\n} // namespace blinkwright::devices\n")
file(WRITE ${OUT} "${text}")
