package org.amberyard.seeds;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Draws the tries of every property from the seed that the system property {@code amberyard.seed} tells, the same one in each build
 * unless told: a build that passed passes again. A seed beside a property goes before.
 */
public final class SeededProperties implements AroundPropertyHook {
    private static final String SEED = System.getProperty("amberyard.seed", "20260901");

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        if (context.attributes().seed().isEmpty()) {
            context.attributes().setSeed(SEED);
        }
        return property.execute();
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }
}
