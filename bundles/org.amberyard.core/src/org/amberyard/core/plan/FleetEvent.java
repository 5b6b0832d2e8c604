package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.PackReplacement;

/** Something that happens to a bus in a year; years count from the base year. */
public sealed interface FleetEvent {

    /** Year. */
    int year();

    /** Place in the fleet. */
    int place();

    /** The bus, as it is at the event. */
    Vehicle vehicle();

    /**
     * A new or used bus takes a place.
     *
     * @param outgoingType type that stood there before
     * @param step the plan's step; empty when the rule bought it
     */
    record Bought(int year, int place, Vehicle vehicle, int outgoingType, Optional<PlanInput.Replacement> step)
            implements FleetEvent {
    }

    /**
     * A bus leaves the fleet.
     *
     * @param scrapped true when a programme has it scrapped, so that it brings nothing
     */
    record Sold(int year, int place, Vehicle vehicle, boolean scrapped) implements FleetEvent {
    }

    /** A bus takes over another place. */
    record Moved(int year, int place, Vehicle vehicle, int from) implements FleetEvent {
    }

    /**
     * A pack is replaced.
     *
     * @param cause why
     * @param refurbished true where a refurbished pack is fitted
     * @param makerShare share of the price that the maker pays under the warranty
     */
    record PackReplaced(int year, int place, Vehicle vehicle, PackReplacement.Cause cause, boolean refurbished, double makerShare)
            implements FleetEvent {
    }

    /**
     * A pack is due but its bus retires at the start of the next year, because with another pack it would cost more over the
     * years that it has left in the study than the next bus does.
     *
     * @param cause why the pack is due
     * @param keptPerYear yearly cost of the bus with another pack, constant money
     * @param nextPerYear yearly cost of the next bus, constant money
     */
    record RetiredForPack(int year, int place, Vehicle vehicle, PackReplacement.Cause cause, double keptPerYear,
            double nextPerYear) implements FleetEvent {
    }
}
