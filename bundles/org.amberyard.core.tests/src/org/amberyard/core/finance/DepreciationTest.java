package org.amberyard.core.finance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class DepreciationTest {
    private static final Macrs BUS = new Macrs(PropertyClass.YEARS_5, Convention.HALF_YEAR);
    private static final double NEAR = 1e-9;

    private static DepreciatedAsset bus(double bonus, OptionalInt sold) {
        return new DepreciatedAsset(new Depreciation(BUS, bonus), 100_000, 2, sold);
    }

    @Test
    void halfYearTableFromTheYearOfPurchase() {
        List<Double> expected = List.of(0.0, 0.0, 20_000.0, 32_000.0, 19_200.0, 11_520.0, 11_520.0, 5_760.0, 0.0);
        for (int year = 0; year < expected.size(); year++) {
            assertEquals(expected.get(year), bus(0, OptionalInt.empty()).deduction(year), NEAR);
        }
    }

    @Test
    void bonusComesFirstAndTheTableIsForTheRest() {
        assertEquals(60_000 + 8000, bus(0.6, OptionalInt.empty()).deduction(2), NEAR);
        assertEquals(12_800, bus(0.6, OptionalInt.empty()).deduction(3), NEAR);
        assertEquals(100_000, bus(1, OptionalInt.empty()).deduction(2), NEAR);
    }

    /** Half of the third year's 19,200 in the year of the sale; what is left is 100,000 - 20,000 - 32,000 - 9,600. */
    @Test
    void saleWithinTheRecoveryPeriod() {
        DepreciatedAsset sold = bus(0, OptionalInt.of(4));
        assertEquals(9_600, sold.deduction(4), NEAR);
        assertEquals(0, sold.deduction(5), 0);
        assertEquals(38_400, sold.basisAfter(4), NEAR);
    }

    /** The last year of the table is a half already, which ends when the bus counts as sold. */
    @Test
    void saleInTheLastYearOfTheTable() {
        assertEquals(5_760, bus(0, OptionalInt.of(7)).deduction(7), NEAR);
        assertEquals(0, bus(0, OptionalInt.of(7)).basisAfter(7), NEAR);
        assertEquals(0, bus(0, OptionalInt.of(12)).basisAfter(12), NEAR);
    }

    @Test
    void nothingIsDeductedForAnAssetSoldInItsFirstYear() {
        assertEquals(0, bus(0.5, OptionalInt.of(2)).deduction(2), 0);
        assertEquals(100_000, bus(0.5, OptionalInt.of(2)).basisAfter(2), 0);
    }

    @Test
    void straightLineOfTheTaxCode() {
        assertEquals(List.of(0.125, 0.25, 0.25, 0.25, 0.125), new StraightLineMethod(4, Convention.HALF_YEAR).shares());
        DepreciatedAsset asset = new DepreciatedAsset(
                new Depreciation(new StraightLineMethod(4, Convention.FIRST_QUARTER), 0), 80, 0, OptionalInt.of(3));
        assertEquals(17.5, asset.deduction(0), NEAR);
        assertEquals(20 / 8.0, asset.deduction(3), NEAR);
        assertEquals(20, asset.basisAfter(3), NEAR);
    }

    /** Over its life everything is deducted, or is left on the books when it is sold. */
    @Property(tries = 300)
    void deductionsAndWhatIsLeftBalance(@ForAll long seed) {
        Random random = new Random(seed);
        Convention convention = Convention.values()[random.nextInt(5)];
        PropertyClass property = PropertyClass.values()[random.nextInt(6)];
        DepreciationMethod method = random.nextBoolean() ? new Macrs(property, convention)
                : new StraightLineMethod(1 + random.nextInt(20), convention);
        int sold = random.nextInt(30);
        DepreciatedAsset kept = new DepreciatedAsset(new Depreciation(method, random.nextDouble()), 1000, 0, OptionalInt.empty());
        DepreciatedAsset left = new DepreciatedAsset(kept.how(), 1000, 0, OptionalInt.of(sold));
        assertEquals(1000, deductions(kept), 1000 * NEAR);
        assertEquals(1000, deductions(left) + left.basisAfter(sold), 1000 * NEAR);
        assertEquals(1, method.shares().stream().mapToDouble(Double::doubleValue).sum(), NEAR);
    }

    private static double deductions(DepreciatedAsset asset) {
        double[] byYear = new double[60];
        Arrays.setAll(byYear, asset::deduction);
        return Arrays.stream(byYear).sum();
    }
}
