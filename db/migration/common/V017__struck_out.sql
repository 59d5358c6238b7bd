-- A disclosure or filing that never was is struck out by a later record with a reason; both stay.

alter table disclosure add column struck_out boolean default false not null;
alter table filing add column struck_out boolean default false not null;
