package org.amberyard.core.plan;

import java.util.List;
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
 */
public record PlanInput(String name, List<Replacement> replacements, List<PortPurchase> ports, List<WorkOrder> works,
        List<OneOff> oneOffs) {

    /**
     * A new bus takes a place.
     *
     * @param year year
     * @param place place in the list of buses
     * @param newType type bought; empty retires the bus without replacement
     * @param cascadeTo place that the outgoing bus takes over; empty sells it
     * @param programme programme that pays a part
     */
    public record Replacement(int year, int place, OptionalInt newType, OptionalInt cascadeTo, OptionalInt programme) {
    }

    /**
     * Ports bought.
     *
     * @param year year
     * @param port place in the list of port types
     * @param count number of ports
     * @param programme programme that pays a part
     */
    public record PortPurchase(int year, int port, int count, OptionalInt programme) {
    }

    /**
     * A site work ordered.
     *
     * @param year year
     * @param work place in the list of works
     * @param programme programme that pays a part
     */
    public record WorkOrder(int year, int work, OptionalInt programme) {
    }

    /**
     * A cost paid once.
     *
     * @param year year
     * @param name what for
     * @param amount base-date money
     */
    public record OneOff(int year, String name, double amount) {
    }

    public PlanInput {
        replacements = List.copyOf(replacements);
        ports = List.copyOf(ports);
        works = List.copyOf(works);
        oneOffs = List.copyOf(oneOffs);
    }
}
