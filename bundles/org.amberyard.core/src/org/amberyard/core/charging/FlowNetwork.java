package org.amberyard.core.charging;

import java.util.Arrays;

/**
 * A network whose maximum flow is found by blocking flows on shortest paths (Dinic 1970). All memory is taken when it is built;
 * arcs are searched in the order in which they were added, so that results are deterministic. A flow is kept between calls: it
 * may be grown after capacities were raised.
 */
final class FlowNetwork {
    private final int sink;
    private final double tolerance;
    private final int[] first;
    private final int[] head;
    private final int[] back;
    private final int[] placeOfArc;
    private final double[] residual;
    private final double[] capacity;
    private final int[] distance;
    private final int[] next;
    private final int[] queue;

    /**
     * The source is node 0, the sink the last node.
     *
     * @param nodes number of nodes
     * @param tails node where each arc starts
     * @param heads node where each arc ends
     * @param capacities capacity of each arc
     * @param tolerance capacity that counts as none
     */
    FlowNetwork(int nodes, int[] tails, int[] heads, double[] capacities, double tolerance) {
        this.sink = nodes - 1;
        this.tolerance = tolerance;
        int arcs = tails.length;
        first = new int[nodes + 1];
        for (int arc = 0; arc < arcs; arc++) {
            first[tails[arc] + 1]++;
            first[heads[arc] + 1]++;
        }
        Arrays.parallelPrefix(first, Integer::sum);
        head = new int[2 * arcs];
        back = new int[2 * arcs];
        placeOfArc = new int[arcs];
        residual = new double[2 * arcs];
        capacity = new double[2 * arcs];
        distance = new int[nodes];
        next = new int[nodes];
        queue = new int[nodes];
        int[] filled = Arrays.copyOf(first, nodes);
        for (int arc = 0; arc < arcs; arc++) {
            int forward = filled[tails[arc]]++;
            int backward = filled[heads[arc]]++;
            placeOfArc[arc] = forward;
            head[forward] = heads[arc];
            head[backward] = tails[arc];
            back[forward] = backward;
            back[backward] = forward;
            capacity[forward] = capacities[arc];
        }
        reset();
    }

    /** Takes all flow away and gives each arc its first capacity. */
    void reset() {
        System.arraycopy(capacity, 0, residual, 0, residual.length);
    }

    double flow(int arc) {
        return residual[back[placeOfArc[arc]]];
    }

    double room(int arc) {
        return residual[placeOfArc[arc]];
    }

    /** Sets the capacity that an arc has left beside its flow. */
    void setRoom(int arc, double room) {
        residual[placeOfArc[arc]] = room;
    }

    /** Adds flow to an arc; a negative amount takes flow away. The caller keeps the balance of nodes. */
    void add(int arc, double amount) {
        int place = placeOfArc[arc];
        residual[place] -= amount;
        residual[back[place]] += amount;
    }

    /** Grows the flow to the maximum and gives what was added. Afterwards {@link #reached} tells the cut nearest the source. */
    double grow() {
        double added = 0;
        while (label()) {
            System.arraycopy(first, 0, next, 0, next.length);
            added += push(0, Double.POSITIVE_INFINITY);
        }
        return added;
    }

    /** True when more flow could reach the node from the source: it lies on the source's side of the smallest cut. */
    boolean reached(int node) {
        return distance[node] >= 0;
    }

    private boolean label() {
        Arrays.fill(distance, -1);
        distance[0] = 0;
        queue[0] = 0;
        int filled = 1;
        for (int place = 0; place < filled; place++) {
            int node = queue[place];
            int further = distance[node] + 1;
            for (int arc = first[node], end = first[node + 1]; arc < end; arc++) {
                int neighbour = head[arc];
                if (distance[neighbour] < 0 && residual[arc] > tolerance) {
                    distance[neighbour] = further;
                    if (neighbour == sink) {
                        return true;
                    }
                    queue[filled++] = neighbour;
                }
            }
        }
        return false;
    }

    private double push(int node, double limit) {
        if (node == sink) {
            return limit;
        }
        double pushed = 0;
        for (int end = first[node + 1]; next[node] < end; next[node]++) {
            int arc = next[node];
            if (residual[arc] > tolerance && distance[head[arc]] == distance[node] + 1) {
                double amount = push(head[arc], Math.min(limit - pushed, residual[arc]));
                residual[arc] -= amount;
                residual[back[arc]] += amount;
                pushed += amount;
                if (limit - pushed <= tolerance) {
                    return pushed;
                }
            }
        }
        return pushed;
    }
}
