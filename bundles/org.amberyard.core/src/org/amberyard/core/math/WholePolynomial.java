package org.amberyard.core.math;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Collections;

/** A polynomial with whole coefficients, by rising power; all its arithmetic is exact. */
final class WholePolynomial {
    /** Bits that are kept of the largest coefficient; the digits of a double fit with room for smaller coefficients. */
    private static final int COEFFICIENT_BITS = 60;

    private final BigInteger[] coefficients;

    private WholePolynomial(BigInteger... coefficients) {
        this.coefficients = coefficients;
    }

    /** A positive multiple of a polynomial, coefficients rounded to whole numbers beside the largest of them. */
    static WholePolynomial of(double[] coefficients) {
        double largest = Arrays.stream(coefficients).map(Math::abs).max().orElse(0);
        if (!(largest > 0) || !Double.isFinite(largest)) {
            throw new IllegalArgumentException("A polynomial needs a finite coefficient other than 0");
        }
        int shift = COEFFICIENT_BITS - Math.getExponent(largest);
        return new WholePolynomial(Arrays.stream(coefficients)
                .mapToObj(c -> BigInteger.valueOf((long) Math.rint(Math.scalb(c, shift)))).toArray(BigInteger[]::new));
    }

    private int degree() {
        return coefficients.length - 1;
    }

    /** A positive multiple of the polynomial in t, where {@code (start + step t) / unit} is put in. */
    WholePolynomial of(BigInteger start, BigInteger step, BigInteger unit) {
        BigInteger[] sum = {coefficients[degree()]};
        BigInteger weight = BigInteger.ONE;
        for (int power = degree() - 1; power >= 0; power--) {
            weight = weight.multiply(unit);
            sum = timesLine(sum, start, step);
            sum[0] = sum[0].add(coefficients[power].multiply(weight));
        }
        return new WholePolynomial(sum);
    }

    private static BigInteger[] timesLine(BigInteger[] polynomial, BigInteger start, BigInteger step) {
        BigInteger[] product = new BigInteger[polynomial.length + 1];
        Arrays.fill(product, BigInteger.ZERO);
        for (int power = 0; power < polynomial.length; power++) {
            product[power] = product[power].add(polynomial[power].multiply(start));
            product[power + 1] = polynomial[power].multiply(step);
        }
        return product;
    }

    /** A positive multiple of the polynomial in t, where t/2 is put in. */
    WholePolynomial ofHalf() {
        BigInteger[] halved = new BigInteger[coefficients.length];
        Arrays.setAll(halved, power -> coefficients[power].shiftLeft(degree() - power));
        return new WholePolynomial(halved);
    }

    /** The polynomial in t, where t + 1 is put in. */
    WholePolynomial ofNext() {
        BigInteger[] shifted = coefficients.clone();
        for (int start = 0; start < shifted.length - 1; start++) {
            for (int power = shifted.length - 2; power >= start; power--) {
                shifted[power] = shifted[power].add(shifted[power + 1]);
            }
        }
        return new WholePolynomial(shifted);
    }

    /** Sign changes that bound the roots between 0 and 1, both left out: exact for none and for one (Descartes). */
    int variationsInside() {
        BigInteger[] reversed = coefficients.clone();
        Collections.reverse(Arrays.asList(reversed));
        int[] signs = Arrays.stream(new WholePolynomial(reversed).ofNext().coefficients).mapToInt(BigInteger::signum)
                .filter(s -> s != 0).toArray();
        int changes = 0;
        for (int i = 1; i < signs.length; i++) {
            changes += signs[i] == signs[i - 1] ? 0 : 1;
        }
        return changes;
    }

    /** True when 0 is a root. */
    boolean isZeroAtStart() {
        return coefficients[0].signum() == 0;
    }

    /** Sign right after 0. */
    int signAfterStart() {
        return Arrays.stream(coefficients).mapToInt(BigInteger::signum).filter(s -> s != 0).findFirst().orElseThrow();
    }

    /** Sign at {@code numerator / 2^bits}. */
    int signAt(BigInteger numerator, int bits) {
        BigInteger sum = coefficients[degree()];
        for (int power = degree() - 1; power >= 0; power--) {
            sum = sum.multiply(numerator).add(coefficients[power].shiftLeft(bits * (degree() - power)));
        }
        return sum.signum();
    }
}
