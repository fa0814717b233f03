// RODAS, a Rosenbrock-Wanner method of order 4 with an embedded one of order 3, L-stable and stiffly
// accurate, for equations of index 1. Coefficients: E. Hairer, G. Wanner, "Solving Ordinary Differential
// Equations II", 2nd ed., Springer 1996, section VI.4 (from memory; tests/core/engine checks the order
// conditions and the observed order).
//
//   stage k:  (M/(h gamma) - J) K_k = F(z + sum_j a[k][j] K_j) + M sum_j (c[k][j]/h) K_j
//   step:     z_new = argument of the last stage + K_6, error estimate = K_6
//   inside:   z(t + s h) = (1-s) z + s (z_new + (1-s) (p + s q)),  p = sum_j d1[j] K_j,  q = sum_j d2[j] K_j
#pragma once

namespace blinkwright::engine::rodas {

inline constexpr int stages = 6;
inline constexpr double gamma = 0.25;

inline constexpr double a[stages][stages] = {
    {},
    {0.1544000000000000e+01},
    {0.9466785280815826e+00, 0.2557011698983284e+00},
    {0.3314825187068521e+01, 0.2896124015972201e+01, 0.9986419139977817e+00},
    {0.1221224509226641e+01, 0.6019134481288629e+01, 0.1253708332932087e+02, -0.6878860361058950e+00},
    {0.1221224509226641e+01, 0.6019134481288629e+01, 0.1253708332932087e+02, -0.6878860361058950e+00, 1.0},
};

inline constexpr double c[stages][stages] = {
    {},
    {-0.5668800000000000e+01},
    {-0.2430093356833875e+01, -0.2063599157091915e+00},
    {-0.1073529058151375e+00, -0.9594562251023355e+01, -0.2047028614809616e+02},
    {0.7496443313967647e+01, -0.1024680431464352e+02, -0.3399990352819905e+02, 0.1170890893206160e+02},
    {0.8083246795921522e+01, -0.7981132988064893e+01, -0.3152159432874371e+02, 0.1631930543123136e+02,
     -0.6058818238834054e+01},
};

inline constexpr double d1[stages] = {0.1012623508344586e+02,  -0.7487995877610167e+01,
                                      -0.3480091861555747e+02, -0.7992771707568823e+01,
                                      0.1025137723295662e+01,  0.0};
inline constexpr double d2[stages] = {-0.6762803392806898e+00, 0.6087714651680015e+01,
                                      0.1643084320892478e+02,  0.2476722511418386e+02,
                                      -0.6594389125716872e+01, 0.0};

} // namespace blinkwright::engine::rodas
