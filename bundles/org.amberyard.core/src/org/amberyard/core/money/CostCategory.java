package org.amberyard.core.money;

import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The tree of cost categories: every amount of a study stands in exactly one leaf. Credits are negative costs. */
public enum CostCategory {
    BUS_PURCHASE(Group.CAPITAL, FlowTime.START, "Bus purchase"),
    BATTERY_REPLACEMENT(Group.CAPITAL, FlowTime.RUNNING, "Battery replacement"),
    PORTS(Group.CAPITAL, FlowTime.START, "Charging ports"),
    SITE_WORKS(Group.CAPITAL, FlowTime.START, "Site works"),
    TRAINING_AND_TOOLS(Group.CAPITAL, FlowTime.START, "Training and tools"),
    FUNDING(Group.FUNDING, FlowTime.START, "Grants and rebates"),
    FUNDING_REPAID(Group.FUNDING, FlowTime.START, "Awards paid back"),
    CREDIT_REVENUE(Group.FUNDING, FlowTime.RUNNING, "Low-carbon credits"),
    OPERATING_AID(Group.FUNDING, FlowTime.RUNNING, "Operating aid"),
    FUEL(Group.ENERGY, FlowTime.RUNNING, "Fuel"),
    EXHAUST_FLUID(Group.ENERGY, FlowTime.RUNNING, "Exhaust fluid"),
    HEATER_FUEL(Group.ENERGY, FlowTime.RUNNING, "Heater fuel"),
    ELECTRIC_ENERGY(Group.ENERGY, FlowTime.RUNNING, "Electric energy"),
    ELECTRIC_DEMAND(Group.ENERGY, FlowTime.RUNNING, "Electric demand"),
    ELECTRIC_FIXED(Group.ENERGY, FlowTime.RUNNING, "Electric fixed charges"),
    UPKEEP(Group.UPKEEP, FlowTime.RUNNING, "Upkeep"),
    PORT_FEES(Group.UPKEEP, FlowTime.RUNNING, "Port fees"),
    PLUG_SWAPS(Group.UPKEEP, FlowTime.RUNNING, "Moving of plugs"),
    INSURANCE(Group.UPKEEP, FlowTime.RUNNING, "Insurance"),
    REGISTRATION(Group.UPKEEP, FlowTime.RUNNING, "Registration"),
    BUS_SALE(Group.RESIDUAL, FlowTime.START, "Bus sales"),
    BUS_VALUE_LEFT(Group.RESIDUAL, FlowTime.END, "Bus value left"),
    PACK_LIFE_LEFT(Group.RESIDUAL, FlowTime.END, "Pack life left"),
    INFRASTRUCTURE_LIFE_LEFT(Group.RESIDUAL, FlowTime.END, "Infrastructure life left"),
    AWARDS_DUE(Group.RESIDUAL, FlowTime.END, "Awards still due"),
    AID_DUE(Group.RESIDUAL, FlowTime.END, "Operating aid still due");

    /** Branches of the tree. */
    public enum Group {
        CAPITAL("Capital"), FUNDING("Funding"), ENERGY("Energy"), UPKEEP("Upkeep and fees"), RESIDUAL("Residual");

        private final String label;

        Group(String label) {
            this.label = label;
        }

        /** Name for tables and charts. */
        public String label() {
            return label;
        }
    }

    private final Group group;
    private final FlowTime time;
    private final String label;

    CostCategory(Group group, FlowTime time, String label) {
        this.group = group;
        this.time = time;
        this.label = label;
    }

    private static final Map<FlowTime, CostCategory> BY_TIME = Arrays.stream(values())
            .collect(Collectors.toMap(CostCategory::time, Function.identity(), (first, other) -> first));

    /** A category whose costs fall at a time of the year. */
    public static CostCategory at(FlowTime time) {
        return BY_TIME.get(time);
    }

    /** Branch that the category hangs on. */
    public Group group() {
        return group;
    }

    /** When in its year the cost falls. */
    public FlowTime time() {
        return time;
    }

    /** Name for tables and charts. */
    public String label() {
        return label;
    }
}
