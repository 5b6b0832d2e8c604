package org.amberyard.core.math;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * All real roots of a polynomial in an open interval, each once however often it counts, in rising order.
 *
 * <p>Descartes' rule of signs bounds the roots in an interval after it is mapped on the positive numbers, and is exact for
 * none and for one; intervals of which it says more are halved (Collins and Akritas, "Polynomial real root isolation using
 * Descartes' rule of signs", 1976; from memory). All of it in whole numbers, so that no root is missed or made up by rounding.
 */
public final class RealRoots {
    /** An interval halved this often in which there may still be several roots holds a touching point. */
    private static final int DEEPEST = 44;
    private static final int ROOT_BITS = 58;

    private final BigDecimal low;
    private final BigDecimal width;
    private final List<Root> found = new ArrayList<>();

    /**
     * A root.
     *
     * @param at where
     * @param touching true when it could not be told apart from a point where the polynomial comes within rounding of zero
     *            without crossing it
     */
    public record Root(double at, boolean touching) {
    }

    /** The part of the interval between two neighbouring multiples of a power of a half, as numbers from 0 to 1. */
    private record Piece(BigInteger number, int halvings) {
        Piece half(int which) {
            return new Piece(number.shiftLeft(1).add(BigInteger.valueOf(which)), halvings + 1);
        }
    }

    private RealRoots(BigDecimal low, BigDecimal width) {
        this.low = low;
        this.width = width;
    }

    /**
     * Roots between two numbers.
     *
     * @param coefficients by rising power
     * @param low lower end, taken by its decimal digits; itself left out
     * @param high upper end, likewise
     * @throws IllegalArgumentException when all coefficients are zero, so that every number is a root
     */
    public static List<Root> between(double[] coefficients, double low, double high) {
        BigDecimal from = BigDecimal.valueOf(low);
        BigDecimal width = BigDecimal.valueOf(high).subtract(from);
        int scale = Math.max(0, Math.max(from.scale(), width.scale()));
        WholePolynomial mapped = WholePolynomial.of(coefficients).of(from.setScale(scale).unscaledValue(),
                width.setScale(scale).unscaledValue(), BigInteger.TEN.pow(scale));
        RealRoots roots = new RealRoots(from, width);
        roots.search(mapped, new Piece(BigInteger.ZERO, 0));
        return roots.found.stream().sorted(Comparator.comparingDouble(Root::at)).toList();
    }

    private void search(WholePolynomial polynomial, Piece piece) {
        int variations = polynomial.variationsInside();
        if (variations == 1) {
            found.add(new Root(refined(polynomial, piece), false));
        } else if (variations > 1 && piece.halvings() >= DEEPEST) {
            found.add(new Root(number(piece.half(1)), true));
        } else if (variations > 1) {
            WholePolynomial left = polynomial.ofHalf();
            WholePolynomial right = left.ofNext();
            search(left, piece.half(0));
            if (right.isZeroAtStart()) {
                found.add(new Root(number(piece.half(1)), false));
            }
            search(right, piece.half(1));
        }
    }

    /** The only root of a piece, closed in by its sign. */
    private double refined(WholePolynomial polynomial, Piece piece) {
        int before = polynomial.signAfterStart();
        BigInteger at = BigInteger.ZERO;
        for (int bits = 1; bits <= ROOT_BITS; bits++) {
            BigInteger middle = at.shiftLeft(1).add(BigInteger.ONE);
            int sign = polynomial.signAt(middle, bits);
            if (sign == 0) {
                return number(within(piece, middle, bits));
            }
            at = sign == before ? middle : middle.subtract(BigInteger.ONE);
        }
        return number(within(piece, at.shiftLeft(1).add(BigInteger.ONE), ROOT_BITS + 1));
    }

    private static Piece within(Piece piece, BigInteger local, int bits) {
        return new Piece(piece.number().shiftLeft(bits).add(local), piece.halvings() + bits);
    }

    /** Lower end of a piece. */
    private double number(Piece piece) {
        BigDecimal share = new BigDecimal(piece.number()).divide(new BigDecimal(BigInteger.TWO.pow(piece.halvings())));
        return low.add(width.multiply(share)).doubleValue();
    }
}
