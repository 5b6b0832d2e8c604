package org.amberyard.core.variants;

/**
 * Whether fitted surfaces are good enough to read draws off them.
 *
 * @param errors by how much they miss
 * @param fittedTo evaluations that they were fitted to
 * @param worst of the present costs and savings of all plans, the largest proportion of what 95 draws of a hundred are missed by at
 *     most to the range from P10 to P90; infinite where something is missed that does not vary
 * @param allowed what it may be; 0 for anything
 */
public record FitCheck(FitErrors errors, int fittedTo, double worst, double allowed) {

    /** True when draws are read off the surfaces; else each is evaluated. */
    public boolean goodEnough() {
        return allowed == 0 || worst <= allowed;
    }
}
