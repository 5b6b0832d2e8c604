/** Bills as utilities have printed them, held against what a tariff asks for the same days. */
package org.amberyard.core.audit;
