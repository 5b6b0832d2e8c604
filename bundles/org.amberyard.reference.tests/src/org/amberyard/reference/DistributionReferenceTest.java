package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.amberyard.core.whatif.Distribution;
import org.amberyard.core.whatif.Empirical;
import org.amberyard.core.whatif.LogNormal;
import org.amberyard.core.whatif.Normal;
import org.amberyard.core.whatif.Pert;
import org.amberyard.core.whatif.Triangular;
import org.amberyard.core.whatif.TruncatedNormal;
import org.amberyard.core.whatif.Uniform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Quantiles, means and deviations beside those of SciPy 1.17.1 (scipy.stats: uniform, triang, norm, truncnorm, lognorm,
 * beta).
 */
class DistributionReferenceTest {
    private static final double[] SHARES = {0.001, 0.05, 0.25, 0.5, 0.9, 0.999};
    private static final double RELATIVE = 2e-10;

    static Stream<Arguments> figures() {
        return Stream.of(
                of(new Uniform(2, 5), 2.003, 2.15, 2.75, 3.5, 4.7, 4.997, 3.5, 0.8660254037844386),
                of(new Triangular(1, 2, 5), 1.0632455532033676, 1.4472135954999579, 2, 2.550510257216822,
                        3.904554884989668,
                        4.890455488498967, 2.666666666666667, 0.8498365855987975),
                of(new Normal(10, 3), 0.7293030814965604, 5.065439119145582, 7.976530749411754, 10, 13.844654696633802,
                        19.27069691850344, 10, 3),
                of(new TruncatedNormal(new Normal(10, 3), 8, 20), 8.007010505186955, 8.338500007958043,
                        9.541479327788558,
                        10.964084233796429,
                        14.315695081448098, 19.125170941331554, 11.276595839033698, 2.177795327226851),
                of(new TruncatedNormal(new Normal(0, 1), 4, 6), 4.000236757085643, 4.012121716189594,
                        4.067563053461504, 4.16109716567986,
                        4.514854532330789, 5.403607763282511, 4.225546931806202, 0.2157710773954302),
                of(LogNormal.ofMedian(120, 200), 45.960825800742505, 72, 97.32172614971095, 120, 178.66102663399045,
                        313.31029739172715, 125.92865005879025, 40.07059332056679),
                of(new LogNormal(Math.log(100) - Math.log1p(0.09) / 2, Math.sqrt(Math.log1p(0.09))), 38.664101906209986, 59.09920564135929, 78.57690847981529,
                        95.78262852211522,
                        139.53201894673228, 237.282426703205, 100, 30),
                of(new Pert(1, 2, 6), 1.0315698708392351, 1.2948869380590862, 1.8171574876113716, 2.3833612969625944,
                        3.72667025216791, 5.2877578436933925, 2.5, 0.8660254037844387),
                of(new Pert(0, 0, 1), 0.00020008004803362555, 0.010206218313011496, 0.05591248870509801,
                        0.12944943670387585,
                        0.36904265551980675, 0.748811356849042, 0.16666666666666666, 0.14085904245475275));
    }

    private static Arguments of(Distribution distribution, double... figures) {
        return Arguments.of(distribution, figures);
    }

    @ParameterizedTest
    @MethodSource("figures")
    void asScipyHasThem(Distribution distribution, double[] figures) {
        for (int i = 0; i < SHARES.length; i++) {
            assertEquals(figures[i], distribution.quantile(SHARES[i]), RELATIVE * distribution.sd());
        }
        assertEquals(figures[SHARES.length], distribution.mean(), RELATIVE * distribution.sd());
        assertEquals(figures[SHARES.length + 1], distribution.sd(), RELATIVE * distribution.sd());
    }

    /** Far into both tails (scipy.stats.norm.ppf). */
    @ParameterizedTest
    @CsvSource({"1e-300,-37.0470962993612", "1e-100,-21.273453560965322", "1e-20,-9.262340089798409",
        "1e-8,-5.612001244174789",
        "0.001,-3.090232306167813", "0.02425,-1.972961051311885", "0.3,-0.5244005127080409", "0.5,0",
        "0.925,1.4395314709384563", "0.975,1.959963984540054", "0.9999,3.719016485455709",
        "0.999999999999,7.0344869100478356"})
    void normalTails(double share, double deviations) {
        assertEquals(deviations, new Normal(0, 1).quantile(share), 2e-15 * Math.max(1, Math.abs(deviations)));
    }

    /** NumPy 2.4.6, numpy.quantile with its standard method, which is linear: type 7 of Hyndman and Fan. */
    @Test
    void observations() {
        Empirical empirical = new Empirical(List.of(3.1, 1.2, 9.9, 4.4, 4.4, 7.0, 2.5));
        Map.of(0.001, 1.2078, 0.05, 1.59, 0.25, 2.8, 0.5, 4.4, 0.9, 8.16, 0.999, 9.8826)
                .forEach((share, value) -> assertEquals(value, empirical.quantile(share), 1e-12));
    }
}
