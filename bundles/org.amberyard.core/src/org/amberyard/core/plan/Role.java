package org.amberyard.core.plan;

/** What a place in the fleet is for. */
public enum Role {
    /** Runs a route every service day. */
    ROUTE,
    /** Covers for buses in the shop. */
    SPARE,
    /** Drives field and athletic trips. */
    ACTIVITY
}
