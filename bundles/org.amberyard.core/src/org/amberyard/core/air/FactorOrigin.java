package org.amberyard.core.air;

import org.amberyard.core.why.InputRef;

/**
 * Where a factor comes from.
 *
 * @param input the input that holds it
 * @param region where it holds; empty when that was not said
 * @param quality how far it can be trusted
 * @param citation document and table; empty when there is none
 * @param date date of the document; empty when it was not said
 */
public record FactorOrigin(InputRef input, String region, FactorQuality quality, String citation, String date) {
}
