-- Which belief about how alike the cuttings of one tray are stands from a day on: the usual one, or
-- what the nursery's own trays teach. Without a row the usual one stands.

create table tray_likeness_choice (
  id          uuid primary key,
  on_date     date not null,
  prior       varchar(10) not null check (prior in ('USUAL', 'OWN')),
  reason      varchar(300) not null,
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null
);
