package org.amberyard.core.plan;

/** Version of the method that computed a result; the version of the bundles. */
public final class EngineVersion {
    /** Major, minor and service part. */
    public static final String VALUE = "1.0.0";

    private EngineVersion() {
    }
}
