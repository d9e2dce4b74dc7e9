//! Reminders as an iCalendar file.
