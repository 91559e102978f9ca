/** The page of the calibration that an order asks for. */
package wainbook.order.calibration.page;
