// What is watched for events: timers and levels of a board of blocks, between two steps and at their ends.
#include "core/engine/large/assembly.h"

#include "core/engine/dense_solve.h"
#include "core/engine/large/phi_functions.h"
#include "core/engine/large/rows.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::engine::large {

Watched Assembly::watched(int block, int timer, const double* z, const double* v, double s) const {
    const Block& b = m_blocks[at(block)];
    const int n = b.states(), r = b.borders();
    double out[4];
    for (int k = 0; k < 4; ++k) {
        const int row = b.watchedRow(timer) + k;
        double sum = b.rowValue()[row] + s * s * (b.rowC2()[row] + s * b.rowC3()[row]);
        for (int j = 0; j < n; ++j) sum += b.rowByMode()[row * n + j] * z[j];
        for (int p = 0; p < r; ++p)
            sum += b.rowByBorder()[row * r + p] * (v[b.piece().borders[at(p)]] - b.base()[n + p]);
        out[k] = sum;
    }
    return {out[0], out[1], out[2], out[3]};
}

Look Assembly::look(int block, int timer) const {
    const Block& b = m_blocks[at(block)];
    const int n = b.states(), r = b.borders(), first = m_first[at(block)];
    const double s = m_time - b.begin_s();
    double speed[12], quasi[12];
    for (int j = 0; j < n; ++j) {
        const std::size_t m = at(first + j);
        speed[j] = m_lambda[m] * m_z[m] + m_force[m] + s * s * (m_c2[m] + s * m_c3[m]);
        quasi[j] = 0;
        for (const int border : b.piece().borders) {
            const double by = m_byBorder[at(border * m_M) + m];
            speed[j] += by * m_V[at(border)];
            quasi[j] = std::max(quasi[j], std::abs(by / m_lambda[m]));
        }
    }
    Look look;
    look.now = watched(block, timer, m_z.data() + first, m_V.data(), s);
    double rate[4];
    for (int k = 0; k < 4; ++k) {
        const int row = b.watchedRow(timer) + k;
        const double bend = s * (2 * b.rowC2()[row] + 3 * s * b.rowC3()[row]);
        double sum = bend, fastest = std::abs(bend), gain = 0;
        for (int p = 0; p < r; ++p) gain = std::max(gain, std::abs(b.rowByBorder()[row * r + p]));
        for (int j = 0; j < n; ++j) {
            const double part = b.rowByMode()[row * n + j] * speed[j];
            sum += part;
            fastest += std::abs(part);
            gain += std::abs(b.rowByMode()[row * n + j]) * quasi[j];
        }
        rate[k] = sum;
        if (k == 3) continue;
        look.fastest = std::max(look.fastest, fastest);
        look.gain = std::max(look.gain, gain);
    }
    look.rate = {rate[0], rate[1], rate[2], rate[3]};
    return look;
}

Watched Assembly::watchedAtEnd(int block, int timer) const {
    return watched(block, timer, m_zEnd.data() + m_first[at(block)], m_VEnd.data(),
                   m_time - m_blocks[at(block)].begin_s() + m_h);
}

Watched Assembly::watchedAt(int block, int timer, double s) {
    double z[12] = {};
    for (int j = 0; j < m_blocks[at(block)].states(); ++j) z[j] = modeAt(m_first[at(block)] + j, s);
    for (int b = 0; b < m_r; ++b) m_VSome[at(b)] = m_curve.at(b, s);
    return watched(block, timer, z, m_VSome.data(), m_time - m_blocks[at(block)].begin_s() + s);
}

bool Assembly::watchedExactly(int block, int timer, double s, Watched& out) {
    Block& b = m_blocks[at(block)];
    double z[12], y[20];
    for (int j = 0; j < b.states(); ++j) z[j] = modeAt(m_first[at(block)] + j, s);
    capacitorVoltages(block, z, y);
    for (int p = 0; p < b.borders(); ++p) y[b.states() + p] = m_curve.at(b.piece().borders[at(p)], s);
    return b.watched(timer, y, out);
}

bool Assembly::watchedNowExactly(int block, int timer, Watched& out) {
    Block& b = m_blocks[at(block)];
    double y[20];
    capacitorVoltages(block, m_z.data() + m_first[at(block)], y);
    for (int p = 0; p < b.borders(); ++p) y[b.states() + p] = m_V[at(b.piece().borders[at(p)])];
    return b.watched(timer, y, out);
}

long Assembly::solves() const {
    long sum = 0;
    for (const Block& b : m_blocks) sum += b.solves();
    return sum;
}

long Assembly::adopted() const {
    long sum = 0;
    for (const Block& b : m_blocks) sum += b.adopted();
    return sum;
}

long Assembly::rejected() const {
    long sum = 0;
    for (const Block& b : m_blocks) sum += b.rejected();
    return sum;
}

} // namespace blinkwright::engine::large
