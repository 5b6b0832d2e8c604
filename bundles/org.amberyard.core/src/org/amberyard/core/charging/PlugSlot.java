package org.amberyard.core.charging;

/**
 * A time at a plug that a bus of the queue could have.
 *
 * @param unit place of the port
 * @param plug plug of the port
 * @param position place in the plug's order
 * @param startMin start of the time at the plug
 * @param readyMin moment at which the bus is full, or can be charged no longer
 * @param shortKwh energy that it lacks then, kWh
 * @param swap true when a person has to plug it in
 */
record PlugSlot(int unit, int plug, int position, double startMin, double readyMin, double shortKwh, boolean swap) {

    /**
     * True when less is lacking, or else the bus is ready sooner.
     *
     * @param sparing true when a slot without a swap comes before one that is ready sooner
     */
    boolean betterThan(PlugSlot other, boolean sparing) {
        if (other == null || shortKwh != other.shortKwh) {
            return other == null || shortKwh < other.shortKwh;
        }
        return sparing && swap != other.swap ? other.swap : readyMin < other.readyMin;
    }
}
