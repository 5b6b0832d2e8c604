package org.amberyard.study.whatif;

import java.util.function.Supplier;

/** Makes a thing when it is first asked for, and gives the same from then on. For one thread. */
final class Once<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private T made;

    private Once(Supplier<T> maker) {
        this.maker = maker;
    }

    static <T> Supplier<T> of(Supplier<T> maker) {
        return new Once<>(maker);
    }

    @Override
    public T get() {
        if (made == null) {
            made = maker.get();
        }
        return made;
    }
}
