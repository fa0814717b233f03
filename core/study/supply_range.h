// The supply voltages for which the makers answer.
//
//   supplyRange(timer.cmos).least_V
#pragma once

namespace blinkwright::study {

struct SupplyRange {
    double least_V, most_V;
    const char* source;
};

inline constexpr SupplyRange bipolarSupplyRange{4.5, 16,
                                                "TI NE555/SA555, SLFS022F; ST Doc ID 2182 Rev 6, Table 2"};
inline constexpr SupplyRange cmosSupplyRange{2, 15, "TI TLC555, SLFS043C"};

constexpr const SupplyRange& supplyRange(bool cmos) {
    return cmos ? cmosSupplyRange : bipolarSupplyRange;
}

} // namespace blinkwright::study
