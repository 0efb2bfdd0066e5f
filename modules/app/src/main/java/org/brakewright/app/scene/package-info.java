/** What the page shows in space: every body at its place in the car, and how far each is moved by a push. */
@NullMarked
package org.brakewright.app.scene;

import org.jspecify.annotations.NullMarked;
