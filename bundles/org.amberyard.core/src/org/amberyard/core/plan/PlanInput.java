package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A course of action. Years count from the base year; purchases fall at the start of their year. Buses that no step names
 * are replaced by the rules of their type.
 *
 * @param name name
 * @param replacements bus replacements
 * @param ports port purchases
 * @param works site works ordered
 * @param oneOffs training, tools and the like
 * @param certainAwardsOnly true when it counts on no award that is not certain
 * @param payment how it is paid for
 */
public record PlanInput(String name, List<Replacement> replacements, List<PortPurchase> ports, List<WorkOrder> works,
        List<OneOff> oneOffs, boolean certainAwardsOnly, PaymentPlan payment) {

    /**
     * A new or used bus takes a place.
     *
     * @param year year
     * @param place place in the list of buses
     * @param newType type bought; empty retires the bus without replacement
     * @param cascadeTo place that the outgoing bus takes over; empty sells it
     * @param programmes places of the programmes that pay a part
     * @param used the bus as it is bought used; empty for a new one
     */
    public record Replacement(int year, int place, OptionalInt newType, OptionalInt cascadeTo, List<Integer> programmes,
            Optional<SecondHand> used) {
        public Replacement {
            programmes = List.copyOf(programmes);
        }

        /** A step that buys a new bus. */
        public Replacement(int year, int place, OptionalInt newType, OptionalInt cascadeTo, List<Integer> programmes) {
            this(year, place, newType, cascadeTo, programmes, Optional.empty());
        }

        /** The same in another year. */
        Replacement in(int other) {
            return new Replacement(other, place, newType, cascadeTo, programmes, used);
        }

        /** True when both take a bus from the same place or bring one there. */
        boolean meets(Replacement other) {
            return touches(other.place) || other.cascadeTo.isPresent() && touches(other.cascadeTo.getAsInt());
        }

        private boolean touches(int where) {
            return place == where || cascadeTo.equals(OptionalInt.of(where));
        }
    }

    /**
     * Ports bought.
     *
     * @param year year; negative for ports that stand at the base date
     * @param port place in the list of port types
     * @param count number of ports
     * @param programmes places of the programmes that pay a part
     */
    public record PortPurchase(int year, int port, int count, List<Integer> programmes) {
        public PortPurchase {
            programmes = List.copyOf(programmes);
        }
    }

    /**
     * A site work ordered.
     *
     * @param year year; negative for one that is done at the base date
     * @param work place in the list of works
     * @param programmes places of the programmes that pay a part
     */
    public record WorkOrder(int year, int work, List<Integer> programmes) {
        public WorkOrder {
            programmes = List.copyOf(programmes);
        }
    }

    /**
     * A cost paid once.
     *
     * @param year year
     * @param name what for
     * @param amount base-date money
     * @param programmes places of the programmes that pay a part
     */
    public record OneOff(int year, String name, double amount, List<Integer> programmes) {
        public OneOff {
            programmes = List.copyOf(programmes);
        }
    }

    /** A plan that counts on every award that it names and is paid in cash. */
    public PlanInput(String name, List<Replacement> replacements, List<PortPurchase> ports, List<WorkOrder> works,
            List<OneOff> oneOffs) {
        this(name, replacements, ports, works, oneOffs, false, PaymentPlan.CASH);
    }

    public PlanInput {
        replacements = List.copyOf(replacements);
        ports = List.copyOf(ports);
        works = List.copyOf(works);
        oneOffs = List.copyOf(oneOffs);
    }

    /** The same with other bus replacements. */
    PlanInput with(List<Replacement> others) {
        return new PlanInput(name, others, ports, works, oneOffs, certainAwardsOnly, payment);
    }

    /** The same with other bus replacements and ports. */
    PlanInput with(List<Replacement> others, List<PortPurchase> otherPorts) {
        return new PlanInput(name, others, otherPorts, works, oneOffs, certainAwardsOnly, payment);
    }

    /** The same without anything but how it is paid for, with some bus replacements and ports. */
    PlanInput only(List<Replacement> others, List<PortPurchase> otherPorts) {
        return new PlanInput(name, others, otherPorts, List.of(), List.of(), certainAwardsOnly, payment);
    }

    /** The same paid for in another way. */
    public PlanInput paid(PaymentPlan other) {
        return new PlanInput(name, replacements, ports, works, oneOffs, certainAwardsOnly, other);
    }
}
